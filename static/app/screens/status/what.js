/** A record in a few words, for lists of what waits or was refused. */
import { shortDateWords } from '../../parts/calendar/date.js';
import { find, heads } from '../../store/heads.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @type {Record<string, string>} */
const KIND_WORDS = {
  patient: 'Patient’s details',
  examination: 'Examination',
  plan: 'Plan',
  signature: 'Signature',
  retraction: 'Taken back',
  join: 'Two entries joined',
  dose_table: 'Dose table',
  theatre_check: 'Check in theatre',
  check_item: 'Question in the checks',
  practice: 'Practice in theatre',
  set_up: 'Set-up',
  operating_list: 'Operating list',
  operation: 'Operation record',
  adjustment: 'Adjustment of a suture',
  follow_up: 'Visit after an operation',
  notebook: 'Old cases from a notebook',
  own_results: 'Own results beside the table',
};

/**
 * What belongs to the clinic and to no patient: what it is called, and where it is changed.
 *
 * @type {Record<string, {name: (body: any) => string, place: (id: string) => string}>}
 */
const OF_THE_CLINIC = {
  dose_table: { name: ({ name }) => name, place: () => '/settings' },
  check_item: { name: ({ title }) => title, place: () => '/settings' },
  notebook: { name: ({ title, surgeon_name }) => `${title}, ${surgeon_name}`, place: () => '/notebook' },
  practice: { name: ({ decided_by }) => `decided by ${decided_by}`, place: () => '/practice' },
  own_results: { name: ({ surgeon_name }) => surgeon_name, place: () => '/own-results' },
  operating_list: { name: ({ on, team }) => `${team}, ${shortDateWords(on)}`, place: (id) => `/lists/${id}` },
};

/** Whether a record belongs to the clinic and to no patient. @param {LedgerRecord} record */
export const isOfTheClinic = ({ kind }) => kind in OF_THE_CLINIC;

/** @param {LedgerRecord} record */
export function kindWords({ kind }) {
  return KIND_WORDS[kind] ?? kind;
}

/**
 * @param {readonly LedgerRecord[]} records
 * @param {LedgerRecord} record
 * @returns {string} name and number of the patient the record belongs to, or what it is called where it is the clinic's
 */
export function whose(records, record) {
  if (record.kind === 'retraction') {
    const target = find(records, record.body.record_id);
    if (target) return `${kindWords(target)}, ${whose(records, target)}`;
  }
  if (isOfTheClinic(record)) return OF_THE_CLINIC[record.kind].name(record.body);
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
 * @param {readonly LedgerRecord[]} records
 * @param {LedgerRecord} record
 * @returns {string} a route
 */
export function placeOf(records, record) {
  const { kind, id, patient, body } = record;
  if (isOfTheClinic(record)) return OF_THE_CLINIC[kind].place(patient);
  const home = `/patients/${patient}`;
  if (kind === 'patient') return `${home}/edit`;
  if (kind === 'examination') return `${home}/measure/${id}`;
  if (kind === 'set_up') return `${home}/set-up/${body.plan_id}`;
  if (kind === 'theatre_check') return `${home}/checks/${body.signature_id}`;
  if (kind === 'operation') return `${home}/operation/${body.signature_id}`;
  if (kind === 'follow_up') return `${home}/visit/${body.operation_id}/${id}`;
  if (kind === 'adjustment') return `${home}/adjust/${body.operation_id}`;
  const target = kind === 'retraction' ? find(records, body.record_id) : undefined;
  return target && isOfTheClinic(target) ? OF_THE_CLINIC[target.kind].place(patient) : home;
}
