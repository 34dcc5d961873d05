/** A surgeon's operations with all that followed them, as the engine is asked for their outcomes. Pure: records in, facts out. */
import { find } from '../store/heads.js';
import { careOf, daysBetween, followedOf } from './following.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {readonly LedgerRecord[]} Records */

/**
 * @typedef {object} OwnOperation
 * @property {string} key what the outcome follows from: the records, which never change, by their ids
 * @property {LedgerRecord} operation
 * @property {LedgerRecord} plan
 * @property {{id: string, care: object, reoperated_days: number | null}} reported what `outcomes` is asked with
 */

/** @type {WeakMap<Records, Map<string, OwnOperation[]>>} */
const known = new WeakMap();

/**
 * In the order in which they were done; without those whose plan is not on this device.
 * @param {Records} records
 * @param {string} surgeon the name in the operation's record
 * @returns {OwnOperation[]}
 */
export function reportedBy(records, surgeon) {
  const kept = known.get(records) ?? new Map();
  known.set(records, kept);
  if (!kept.has(surgeon)) kept.set(surgeon, reported(records, surgeon));
  return kept.get(surgeon);
}

/** @param {Records} records @param {string} surgeon @returns {OwnOperation[]} */
function reported(records, surgeon) {
  return followedOf(records)
    .filter(({ operation }) => operation.body.surgeon_name === surgeon)
    .flatMap((followed) => {
      const { operation, adjustment, visits, endedOn } = followed;
      const care = careOf(records, followed, null);
      const plan = find(records, operation.body.plan_id);
      if (!care || !plan) return [];
      const measured = visits.map(({ body }) => find(records, body.examination_id ?? '')?.id);
      const reoperated_days = endedOn === null ? null : daysBetween(operation.body.operated_on, endedOn);
      const key = [operation.id, adjustment?.id, ...visits.map(({ id }) => id), ...measured, reoperated_days].join(' ');
      return [{ key, operation, plan, reported: { id: operation.id, care, reoperated_days } }];
    });
}
