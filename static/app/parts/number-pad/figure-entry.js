/** The state of a plain figure (mm, degrees, a year) while it is touched in. Values in, values out. */

import { erase, press, typedFrom, valueOf } from './digits.js';

/** @typedef {'plus' | 'minus'} Sign */
/** @typedef {{plus: string, minus: string}} Signs words for the two directions of a figure */
/** @typedef {{low: number, high: number, decimals: number, unit: string, signs?: Signs}} Range with `signs` it reaches as far to both sides */
/** @typedef {{typed: import('./digits.js').Typed, sign: Sign | null, refusal: string}} FigureEntry */

/**
 * @param {number | null | undefined} value
 * @returns {FigureEntry}
 */
export const figureEntry = (value) => ({ typed: typedFrom(value), sign: value ? (value > 0 ? 'plus' : 'minus') : null, refusal: '' });

/** "0.5 to 20 mm". @param {Range} range */
export const rangeWords = ({ low, high, unit, signs }) => `${signs ? 0 : low} to ${high}${unit && ` ${unit}`}`;

/**
 * The direction of a figure; the same one again takes it back.
 * @param {FigureEntry} entry
 * @param {Sign} sign
 * @returns {FigureEntry}
 */
export const figurePointed = (entry, sign) => ({ ...entry, sign: entry.sign === sign ? null : sign, refusal: '' });

/**
 * @param {FigureEntry} entry
 * @param {string} key '0' to '9', '.' or 'erase'
 * @param {Range} range
 * @returns {FigureEntry}
 */
export function figureTouched(entry, key, range) {
  if (key === 'erase') return { ...entry, typed: erase(entry.typed), refusal: '' };
  const { typed, refusal } = press(entry.typed, key, range);
  if (!refusal) return { ...entry, typed, refusal: '' };
  const words = refusal.code === 'too_fine' ? 'No finer than this.' : 'Too large.';
  return { ...entry, typed, refusal: `${words} Allowed: ${rangeWords(range)}.` };
}

/**
 * The figure, or why it cannot be taken.
 * @param {FigureEntry} entry
 * @param {Range} range
 * @returns {{value: number | null, refusal: string}}
 */
export function figureTaken({ typed, sign }, range) {
  const size = valueOf(typed);
  if (size === null) return { value: null, refusal: '' };
  if (range.signs && size !== 0 && sign === null) {
    return { value: null, refusal: `A figure needs its direction: ${range.signs.plus} or ${range.signs.minus}.` };
  }
  if (size < range.low) return { value: null, refusal: `Too small. Allowed: ${rangeWords(range)}.` };
  return { value: sign === 'minus' && size !== 0 ? -size : size, refusal: '' };
}
