/** The doses that the surgeon set by hand, as a list with one figure for each muscle of an option. */

/** @typedef {import('./case.js').Change} Change */
/** @typedef {{option: string, eye: string, muscle: string}} Place */

export const STEP_MM = 0.5;

/**
 * @param {Change[]} changes
 * @param {Change} change
 * @returns {Change[]}
 */
export const withChange = (changes, change) => [...withoutChange(changes, change), change].sort(byPlace);

/**
 * Back to the table for one muscle.
 * @param {Change[]} changes
 * @param {Place} place
 */
export const withoutChange = (changes, place) => changes.filter((change) => keyOf(change) !== keyOf(place));

/**
 * Back to the table for a whole option.
 * @param {Change[]} changes
 * @param {string} option
 */
export const withoutOption = (changes, option) => changes.filter((change) => change.option !== option);

/**
 * The next half millimetre up or down; a figure between two halves goes to the nearer end first.
 * @param {number} mm
 * @param {1 | -1} direction
 * @param {{low: number, high: number}} limits
 */
export function stepped(mm, direction, { low, high }) {
  const steps = mm / STEP_MM;
  const next = direction > 0 ? Math.floor(steps) + 1 : Math.ceil(steps) - 1;
  return Math.min(high, Math.max(low, next * STEP_MM));
}

/** @param {Place} place */
const keyOf = ({ option, eye, muscle }) => `${option} ${eye} ${muscle}`;

/**
 * @param {Place} one
 * @param {Place} other
 */
const byPlace = (one, other) => (keyOf(one) < keyOf(other) ? -1 : 1);
