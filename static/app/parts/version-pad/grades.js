/** The versions of both eyes as a list with one grade for each muscle, in one order whatever the order of touching. */

import { EYES, MUSCLES } from '../../words/anatomy.js';

/** @typedef {{eye: import('../../words/anatomy.js').Eye, muscle: import('../../words/anatomy.js').Muscle}} Place */
/** @typedef {Place & {grade: number}} Version */

export const GRADES = [-4, -3, -2, -1, 0, 1, 2, 3, 4];

/**
 * @param {Version[]} versions
 * @param {Place} place
 * @returns {number | null}
 */
export const gradeOf = (versions, place) => versions.find((version) => isAt(version, place))?.grade ?? null;

/**
 * @param {Version[]} versions
 * @param {Place} place
 * @param {number | null} grade null takes it out
 * @returns {Version[]}
 */
export function withGrade(versions, place, grade) {
  const others = versions.filter((version) => !isAt(version, place));
  if (grade === null) return others;
  return [...others, { ...place, grade }].sort((one, other) => order(one) - order(other));
}

/**
 * @param {Place} one
 * @param {Place} other
 */
const isAt = (one, other) => one.eye === other.eye && one.muscle === other.muscle;

/** @param {Place} place */
const order = ({ eye, muscle }) => EYES.indexOf(eye) * MUSCLES.length + MUSCLES.indexOf(muscle);
