/** Which of the recorded operations stand among the previous ones of an examination. Values in, values out. */
import { EMPTY_OPERATION } from '../examination.js';

/** @typedef {import('../examination.js').PastOperation} PastOperation */
/** @typedef {{previous: PastOperation, operated_on: string, limbus_mm: number | null, adjusted: boolean, text: string}} Earlier an `EarlierMuscle` of the engine */

const FIELDS = /** @type {const} */ (['eye', 'muscle', 'operation', 'mm', 'year']);

/** @param {PastOperation} one @param {PastOperation} other */
const same = (one, other) => FIELDS.every((field) => (one[field] ?? null) === (other[field] ?? null));

/** @param {Earlier} earlier @param {PastOperation[]} operations */
export const isTaken = ({ previous }, operations) => operations.some((operation) => same(previous, operation));

/**
 * Those that are missing are added; what was entered by hand stays. The same operation recorded twice stands twice.
 * @param {Earlier[]} earlier
 * @param {PastOperation[]} operations
 * @returns {PastOperation[]}
 */
export function takenOver(earlier, operations) {
  const left = [...operations];
  const missing = earlier.filter(({ previous }) => {
    const index = left.findIndex((operation) => same(previous, operation));
    if (index >= 0) left.splice(index, 1);
    return index < 0;
  });
  return [...operations, ...missing.map(({ previous }) => ({ ...EMPTY_OPERATION, ...previous }))];
}

/** Where a previous operation comes from, or an empty text. @param {PastOperation} operation @param {Earlier[]} earlier */
export function sourceOf(operation, earlier) {
  return earlier.find(({ previous }) => same(previous, operation))?.operated_on ?? '';
}
