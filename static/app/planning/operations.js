/** What was done by a signed plan, and what is still open of it. Pure: records in, facts out. */
import { practiceOf } from '../preparing/practice.js';
import { heads } from '../store/heads.js';
import { membersOf } from '../store/joined.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {readonly LedgerRecord[]} Records */

/**
 * @typedef {object} Operated
 * @property {LedgerRecord} operation
 * @property {LedgerRecord} [adjustment] the newest current one of that very content of the operation
 * @property {LedgerRecord[]} adjustments all current ones: more than one were written on devices that had not heard of each other
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
      const own = adjustments.filter(({ body }) => body.operation_id === operation.id && body.operation_digest === operation.digest);
      return { operation, adjustment: own[0], adjustments: own, open: own.length > 0 ? null : (operation.body.window ?? null) };
    });
}

/**
 * Those done by one signature; more than one were written on devices that had not heard of each other.
 * @param {Records} records
 * @param {LedgerRecord} signature
 */
export const operationsBy = (records, signature) => operationsOf(records, signature.patient).filter(({ operation }) => operation.body.signature_id === signature.id);

/**
 * Records of one operation, and of the adjustment of one, that are several until a person settles which is right.
 * @param {Records} records
 * @param {string} patient
 * @returns {{kind: 'operation' | 'adjustment', heads: LedgerRecord[]}[]}
 */
export function unsettledOf(records, patient) {
  const operated = operationsOf(records, patient);
  /** @type {Map<string, LedgerRecord[]>} */
  const bySignature = new Map();
  for (const { operation } of operated) bySignature.set(operation.body.signature_id, [...(bySignature.get(operation.body.signature_id) ?? []), operation]);
  return [
    ...[...bySignature.values()].map((heads) => ({ kind: /** @type {const} */ ('operation'), heads })),
    ...operated.map(({ adjustments }) => ({ kind: /** @type {const} */ ('adjustment'), heads: adjustments })),
  ].filter(({ heads }) => heads.length > 1);
}

/**
 * What the engine is asked for the muscles' present places: every record, for several of one signed plan are not settled, and the
 * engine says so; of whoever was entered twice and joined, those under either entry.
 * @param {Records} records
 * @param {string} patient
 * @returns {{operations: any[], adjustments: any[]} | null} null where nothing was recorded
 */
export function earlierQuestion(records, patient) {
  const all = membersOf(records, patient).flatMap((member) => operationsOf(records, member));
  if (all.length === 0) return null;
  all.sort((a, b) => (key(a.operation) < key(b.operation) ? -1 : 1));
  return { operations: all.map(({ operation }) => operation.body), adjustments: all.flatMap(({ adjustments }) => adjustments.map(({ body }) => body)) };
}

/**
 * What the engine fills a record in from: the clinic's practice with it, for it says how long is waited after a block.
 * @param {Records} records
 * @param {{plan: LedgerRecord, signature: LedgerRecord}} pieces
 * @param {{operated_on: string, surgeon_name: string}} who
 */
export const draftQuestion = (records, { plan, signature }, who) => ({
  plan: plan.body,
  signature: signature.body,
  signature_id: signature.id,
  ...who,
  practice: practiceOf(records).current?.body ?? null,
});

/**
 * What the engine makes the operation note of: the newest record, and beside it all that nobody has settled yet.
 * @param {LedgerRecord} patient
 * @param {{plan: LedgerRecord, signature: LedgerRecord}} pieces
 * @param {Operated[]} operated the newest last
 */
export function noteQuestion(patient, { plan, signature }, operated) {
  const told = operated.toReversed().flatMap(({ operation, adjustments }) =>
    (adjustments.length > 0 ? adjustments : [null]).map((adjustment) => ({ operation: operation.body, adjustment: adjustment?.body ?? null })),
  );
  const [shown, ...others] = told;
  return { patient: patient.body, plan: plan.body, signature: signature.body, ...shown, ...(others.length > 0 && { others }) };
}

/** By the day; of one day by when they were written. @param {LedgerRecord} record */
const key = ({ body, id }) => `${body.operated_on} ${id}`;
