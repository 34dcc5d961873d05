/** All patients of the clinic with how far each has come, last worked on first. */
import { find, heads } from '../../store/heads.js';
import { membersOf } from '../../store/joined.js';
import { operationsOf } from '../../planning/operations.js';
import { progressOf } from './progress.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/**
 * @typedef {object} Entry
 * @property {string} id the patient's id, as in the routes
 * @property {any} body of the newest current version of the patient's record
 * @property {any[]} also bodies of the same person's other entries, who was entered twice
 * @property {boolean} conflict two current versions of the patient's record, or of the other entry's
 * @property {import('./progress.js').State} state
 * @property {{earliest_at: string, latest_at: string} | null} toAdjust when a suture that nobody has adjusted yet can be adjusted, under whichever entry
 */

/**
 * @param {readonly LedgerRecord[]} records
 * @returns {Entry[]}
 */
export function worklist(records) {
  const examinations = byPatient(heads(records, 'examination'));
  const plans = byPatient(heads(records, 'plan'));
  const signatures = byPatient(heads(records, 'signature'));
  const touched = lastTouch(records);
  const toAdjust = new Map(operationsOf(records).flatMap(({ operation, open }) => (open ? [[operation.patient, open]] : [])));

  const patients = byPatient(heads(records, 'patient'));
  const of = (/** @type {Map<string, LedgerRecord[]>} */ groups, /** @type {string[]} */ ids) => ids.flatMap((each) => groups.get(each) ?? []);

  return [...patients]
    .map(([id, versions]) => ({ id, versions, members: membersOf(records, id).filter((member) => patients.has(member)) }))
    .filter(({ id, members }) => members[0] === id)
    .map(({ id, versions, members }) => ({ id, versions, members, last: lastOf(touched, members) }))
    .sort((a, b) => (a.last < b.last ? 1 : -1))
    .map(({ id, versions, members }) => ({
      id,
      body: versions[0].body,
      also: members.slice(1).map((member) => /** @type {LedgerRecord[]} */ (patients.get(member))[0].body),
      conflict: members.some((member) => of(patients, [member]).length > 1),
      toAdjust: members.map((member) => toAdjust.get(member)).find(Boolean) ?? null,
      state: progressOf(
        { examinations: of(examinations, members), plans: of(plans, members), signatures: of(signatures, members) },
        (wanted) => find(records, wanted) !== undefined,
      ).state,
    }));
}

/** @param {Map<string, string>} touched @param {string[]} patients */
const lastOf = (touched, patients) => patients.reduce((last, id) => ((touched.get(id) ?? '') > last ? /** @type {string} */ (touched.get(id)) : last), '');

/** @param {LedgerRecord[]} records */
function byPatient(records) {
  /** @type {Map<string, LedgerRecord[]>} */
  const groups = new Map();
  for (const record of records) {
    const group = groups.get(record.patient);
    if (group) group.push(record);
    else groups.set(record.patient, [record]);
  }
  return groups;
}

/** The id of each patient's latest record: ids begin with the time they were made. @param {readonly LedgerRecord[]} records */
function lastTouch(records) {
  /** @type {Map<string, string>} */
  const latest = new Map();
  for (const { patient, id } of records) {
    if (id > (latest.get(patient) ?? '')) latest.set(patient, id);
  }
  return latest;
}
