/** What was done by a signed plan, and what is still open of it. Pure: records in, facts out. */
import { heads } from '../store/heads.js';
import { membersOf } from '../store/joined.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {readonly LedgerRecord[]} Records */

/**
 * @typedef {object} Operated
 * @property {LedgerRecord} operation
 * @property {LedgerRecord} [adjustment] the current one of that very content of the operation
 * @property {{earliest_at: string, latest_at: string} | null} open the window while nobody has adjusted, or tied, the suture
 */

/**
 * A patient's operations in the order in which they were done.
 * @param {Records} records
 * @param {string} [patient] without one: of all patients
 * @returns {Operated[]}
 */
export function operationsOf(records, patient) {
  const adjustments = heads(records, 'adjustment', patient);
  return heads(records, 'operation', patient)
    .sort((a, b) => (key(a) < key(b) ? -1 : 1))
    .map((operation) => {
      const adjustment = adjustments.find(({ body }) => body.operation_id === operation.id && body.operation_digest === operation.digest);
      return { operation, adjustment, open: adjustment ? null : (operation.body.window ?? null) };
    });
}

/**
 * Those done by one signature; more than one were written on devices that had not heard of each other.
 * @param {Records} records
 * @param {LedgerRecord} signature
 */
export const operationsBy = (records, signature) => operationsOf(records, signature.patient).filter(({ operation }) => operation.body.signature_id === signature.id);

/**
 * What the engine is asked for the muscles' present places: one record for each signed plan, the newest; of whoever was entered
 * twice and joined, those under either entry.
 * @param {Records} records
 * @param {string} patient
 * @returns {{operations: any[], adjustments: any[]} | null} null where nothing was recorded
 */
export function earlierQuestion(records, patient) {
  /** @type {Map<string, Operated>} */
  const bySignature = new Map();
  const all = membersOf(records, patient).flatMap((member) => operationsOf(records, member));
  all.sort((a, b) => (key(a.operation) < key(b.operation) ? -1 : 1));
  for (const operated of all) bySignature.set(operated.operation.body.signature_id, operated);
  if (bySignature.size === 0) return null;
  const done = [...bySignature.values()];
  return { operations: done.map(({ operation }) => operation.body), adjustments: done.flatMap(({ adjustment }) => (adjustment ? [adjustment.body] : [])) };
}

/** By the day; of one day by when they were written. @param {LedgerRecord} record */
const key = ({ body, id }) => `${body.operated_on} ${id}`;
