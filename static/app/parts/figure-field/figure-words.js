/** A figure with its unit, and its direction as a word. */
import { GAP } from '../../words/figures.js';

/**
 * "excyclo 5 °", "63.5 mm", "0 °".
 * @param {number} value
 * @param {import('../number-pad/figure-entry.js').Range} range
 */
export function figureWords(value, { unit, signs }) {
  const size = `${Math.abs(value)}${unit && `${GAP}${unit}`}`;
  return signs && value !== 0 ? `${value > 0 ? signs.plus : signs.minus} ${size}` : size;
}
