/** Every operation with what the engine makes a result of, and whose it is. Pure: records in, facts out. */
import { careOf, daysBetween, followedOf } from '../planning/following.js';
import { find, heads } from '../store/heads.js';
import { rootOf } from '../store/joined.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {readonly LedgerRecord[]} Records */

/**
 * @typedef {object} Operation
 * @property {string} key the records that its result follows from, by their ids: they never change, so neither does the result
 * @property {{id: string, care: object, reoperated_days: number | null}} reported what `outcomes` is asked with
 * @property {string} person the first entry of the patient
 * @property {string | null} bornOn
 */

/**
 * @param {Records} records
 * @returns {{operations: Operation[], absent: number}} `absent`: their plans are not on this device
 */
export function operatedOf(records) {
  const followed = followedOf(records);
  const operations = followed.flatMap((each) => {
    const care = careOf(records, each, null);
    if (!care) return [];
    const { operation, adjustment, visits, endedOn } = each;
    const reoperated_days = endedOn === null ? null : daysBetween(operation.body.operated_on, endedOn);
    const examinations = visits.map(({ body }) => find(records, body.examination_id ?? ''));
    const key = [operation, adjustment, ...visits, ...examinations].map((record) => record?.id ?? '').join(' ');
    const bornOn = heads(records, 'patient', operation.patient)[0]?.body.born_on ?? null;
    return [{ key: `${key} ${endedOn ?? ''}`, reported: { id: operation.id, care, reoperated_days }, person: rootOf(records, operation.patient), bornOn }];
  });
  return { operations, absent: followed.length - operations.length };
}

/**
 * Without what is null anyway: of thousands of operations that is half.
 * @param {any} value
 * @returns {any}
 */
export function lean(value) {
  if (Array.isArray(value)) return value.map(lean);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).flatMap(([name, each]) => (each === null ? [] : [[name, lean(each)]])));
}
