/** The records by which a person settles which of several is right: a copy of the chosen one that replaces them all. Pure. */
import { operationsOf } from './operations.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */

/** Records that name who did something, and who wrote it down for them. */
const NAMING = ['operation', 'adjustment'];

/**
 * The body as this person writes it: who wrote it stands beside the surgeon where the two are not one.
 * @param {string} kind
 * @param {any} body
 * @param {string} name of the account
 */
export function writtenBy(kind, body, name) {
  if (!NAMING.includes(kind)) return body;
  const { recorded_by: _, ...said } = body;
  return said.surgeon_name === name ? said : { ...said, recorded_by: name };
}

/**
 * The adjustments of the chosen operation, read before it is replaced.
 * @param {readonly LedgerRecord[]} records
 * @param {LedgerRecord} chosen
 */
export const adjustmentsOf = (records, chosen) => operationsOf(records, chosen.patient).find(({ operation }) => operation.id === chosen.id)?.adjustments ?? [];

/**
 * An adjustment, said of the record that takes its operation's place: what was adjusted stays adjusted.
 * @param {LedgerRecord} adjustment
 * @param {LedgerRecord} saved what takes the operation's place
 * @param {string} name of the account
 */
export const adjustmentKept = (adjustment, saved, name) => ({
  patient: adjustment.patient,
  supersedes: [adjustment.id],
  body: writtenBy('adjustment', { ...adjustment.body, operation_id: saved.id, operation_digest: saved.digest }, name),
});
