/**
 * Patients who were entered twice and joined, of an append-only ledger. Pure: records in, answers out; kept for as long as the same
 * array is asked about. Nothing is moved: every record keeps its patient, and a join that is taken back parts them again.
 *
 *     rootOf(records, patient)     the id under which the person is shown; the patient's own where nobody joined anything
 *     membersOf(records, patient)  all ids of that person, the one they are shown under first
 *     joinsOf(records, patient)    the joins in force between them
 *     wereParted(records, a, b)    whether a join of these two was taken back: people have said that they are two
 */
import { heads, retractionOf } from './heads.js';

/** @typedef {import('./envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {{roots: Map<string, string>, members: Map<string, string[]>, joins: LedgerRecord[]}} People */

/** @type {WeakMap<readonly LedgerRecord[], People>} */
const known = new WeakMap();

/**
 * @param {readonly LedgerRecord[]} records
 * @param {string} patient
 * @returns {string}
 */
export const rootOf = (records, patient) => peopleOf(records).roots.get(patient) ?? patient;

/**
 * @param {readonly LedgerRecord[]} records
 * @param {string} patient
 * @returns {string[]}
 */
export const membersOf = (records, patient) => peopleOf(records).members.get(rootOf(records, patient)) ?? [patient];

/**
 * @param {readonly LedgerRecord[]} records
 * @param {string} patient
 * @returns {LedgerRecord[]}
 */
export function joinsOf(records, patient) {
  const members = new Set(membersOf(records, patient));
  return peopleOf(records).joins.filter(({ body }) => members.has(body.patient_a));
}

/**
 * @param {readonly LedgerRecord[]} records
 * @param {string} one
 * @param {string} other
 */
export function wereParted(records, one, other) {
  return records.some(({ kind, id, body }) =>
    kind === 'join' && [body.patient_a, body.patient_b].includes(one) && [body.patient_a, body.patient_b].includes(other) &&
    retractionOf(records, id) !== null);
}

/**
 * @param {readonly LedgerRecord[]} records
 * @returns {People}
 */
function peopleOf(records) {
  const kept = known.get(records);
  if (kept) return kept;
  const joins = heads(records, 'join');
  /** @type {Map<string, Set<string>>} */
  const groups = new Map();
  for (const { body: { patient_a: a, patient_b: b } } of joins) {
    const together = new Set([a, b, ...(groups.get(a) ?? []), ...(groups.get(b) ?? [])]);
    for (const id of together) groups.set(id, together);
  }
  /** @type {People} */
  const people = { roots: new Map(), members: new Map(), joins };
  for (const group of new Set(groups.values())) {
    const [root, ...others] = inOrder([...group], joins);
    people.members.set(root, [root, ...others]);
    for (const id of group) people.roots.set(id, root);
  }
  known.set(records, people);
  return people;
}

/**
 * First whom nobody joined to another; where two people joined the two the other way round, whoever was entered first.
 *
 * @param {string[]} ids
 * @param {LedgerRecord[]} joins
 */
function inOrder(ids, joins) {
  const seconds = new Set(joins.map(({ body }) => body.patient_b));
  const rank = (/** @type {string} */ id) => `${seconds.has(id) ? 1 : 0} ${id}`;
  return ids.sort((a, b) => (rank(a) < rank(b) ? -1 : 1));
}
