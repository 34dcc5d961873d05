/** A record in a few words, for lists of what waits or was refused. */
import { heads } from '../../store/heads.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @type {Record<string, string>} */
const KIND_WORDS = {
  patient: 'Patient’s details',
  examination: 'Examination',
  plan: 'Plan',
  signature: 'Signature',
  retraction: 'Record taken back',
  join: 'Two entries joined',
  dose_table: "The clinic's dose table",
  theatre_check: 'Check in theatre',
  check_item: "The clinic's own question in the checks",
  operation: 'Operation record',
  adjustment: 'Adjustment of a suture',
};

/** @param {LedgerRecord} record */
export function kindWords({ kind }) {
  return KIND_WORDS[kind] ?? kind;
}

/**
 * @param {readonly LedgerRecord[]} records
 * @param {LedgerRecord} record
 * @returns {string} name and number of the patient the record belongs to, or the name of a table
 */
export function whose(records, record) {
  if (record.kind === 'dose_table') return record.body.name;
  if (record.kind === 'check_item') return record.body.title;
  const body = heads(records, 'patient', record.patient)[0]?.body;
  return body ? `${body.full_name}, ${body.hospital_number}` : 'a patient who is not on this phone';
}

/**
 * @param {import('../../store/carrying.js').Carried} carried
 * @param {LedgerRecord} record
 */
export function carriedFor({ maker, stuck }, { author }) {
  const name = maker || author;
  return stuck ? `made by ${name}; only their device can send it` : `carried for ${name}`;
}

/**
 * Where a record can be looked at and corrected.
 *
 * @param {LedgerRecord} record
 * @returns {string} a route
 */
export function placeOf({ kind, id, patient, body }) {
  if (kind === 'dose_table' || kind === 'check_item') return '/settings';
  const home = `/patients/${patient}`;
  if (kind === 'patient') return `${home}/edit`;
  if (kind === 'examination') return `${home}/measure/${id}`;
  if (kind === 'theatre_check') return `${home}/checks/${body.signature_id}`;
  if (kind === 'operation') return `${home}/operation/${body.signature_id}`;
  if (kind === 'adjustment') return `${home}/adjust/${body.operation_id}`;
  return home;
}
