/** The scale of one's own effect: a stretch around the table, with what lies beyond it at its end. */

export const WIDTH = 340;
export const EDGE = 12;
const LOW = 0.7;
const HIGH = 1.35;

/** @param {number} effect the table has 1 */
export const placeOf = (effect) => Math.round(10 * (EDGE + ((Math.min(HIGH, Math.max(LOW, effect)) - LOW) / (HIGH - LOW)) * (WIDTH - 2 * EDGE))) / 10;

/** @param {number} effect */
export const perCent = (effect) => `${Math.round(100 * effect)}\u202f%`;
