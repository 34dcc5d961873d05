/** Ductions and forced ductions as lists with one entry for each muscle, in one order whatever the order of touching. */
import { EYES, MUSCLES } from '../../words/anatomy.js';
import { gradeWords } from '../../words/figures.js';

/** @typedef {{eye: import('../../words/anatomy.js').Eye, muscle: import('../../words/anatomy.js').Muscle}} Place */
/** @typedef {Place & {grade: number}} Duction */
/** @typedef {Place & {result: 'free' | 'restricted'}} ForcedDuction */

/** From a full movement to none past the middle. */
export const LIMITATIONS = [0, -1, -2, -3, -4];

/** @type {ForcedDuction['result'][]} */
export const PULLS = ['free', 'restricted'];

/**
 * @template {Place} T
 * @param {T[]} entries
 * @param {Place} place
 */
export const entryOf = (entries, place) => entries.find((entry) => isAt(entry, place));

/**
 * @template {Place} T
 * @param {T[]} entries
 * @param {Place} place
 * @param {Omit<T, 'eye' | 'muscle'> | null} said null takes it out
 * @returns {T[]}
 */
export function withEntry(entries, place, said) {
  const others = entries.filter((entry) => !isAt(entry, place));
  if (said === null) return others;
  const entry = /** @type {T} */ (/** @type {unknown} */ ({ eye: place.eye, muscle: place.muscle, ...said }));
  return [...others, entry].sort((one, other) => order(one) - order(other));
}

/** "full", "−2". @param {number} grade */
export const limitationWords = (grade) => (grade === 0 ? 'full' : gradeWords(grade));

/**
 * @param {Place} one
 * @param {Place} other
 */
const isAt = (one, other) => one.eye === other.eye && one.muscle === other.muscle;

/** @param {Place} place */
const order = ({ eye, muscle }) => EYES.indexOf(eye) * MUSCLES.length + MUSCLES.indexOf(muscle);
