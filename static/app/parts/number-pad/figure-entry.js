/** The state of a plain figure (mm, a year) while it is touched in. Values in, values out. */

import { erase, press, typedFrom, valueOf } from './digits.js';

/** @typedef {{low: number, high: number, decimals: number, unit: string}} Range */
/** @typedef {{typed: import('./digits.js').Typed, refusal: string}} FigureEntry */

/**
 * @param {number | null | undefined} value
 * @returns {FigureEntry}
 */
export const figureEntry = (value) => ({ typed: typedFrom(value), refusal: '' });

/** "0.5 to 20 mm". @param {Range} range */
export const rangeWords = ({ low, high, unit }) => `${low} to ${high}${unit && ` ${unit}`}`;

/**
 * @param {FigureEntry} entry
 * @param {string} key '0' to '9', '.' or 'erase'
 * @param {Range} range
 * @returns {FigureEntry}
 */
export function figureTouched(entry, key, range) {
  if (key === 'erase') return { typed: erase(entry.typed), refusal: '' };
  const { typed, refusal } = press(entry.typed, key, range);
  if (!refusal) return { typed, refusal: '' };
  const words = refusal.code === 'too_fine' ? 'No finer than this.' : 'Too large.';
  return { typed, refusal: `${words} Allowed: ${rangeWords(range)}.` };
}

/**
 * The figure, or why it cannot be taken.
 * @param {FigureEntry} entry
 * @param {Range} range
 * @returns {{value: number | null, refusal: string}}
 */
export function figureTaken(entry, range) {
  const value = valueOf(entry.typed);
  if (value === null) return { value, refusal: '' };
  if (value < range.low) return { value: null, refusal: `Too small. Allowed: ${rangeWords(range)}.` };
  return { value, refusal: '' };
}
