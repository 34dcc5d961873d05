/** A reading in words. A direction is a word, never a sign or a colour. */

import { prismWords } from './figures.js';

/** @typedef {'horizontal' | 'vertical'} Axis */
/** @typedef {{gaze: string, range: string, correction: string, condition?: string, method?: string, repeat?: number}} Cell what tells two readings apart */
/** @typedef {Cell & {horizontal_pd?: number | null, vertical_pd?: number | null, technique?: import('./taking.js').Technique | null}} Reading */

/** The word of each direction by axis: first the positive one (eso +, right hyper +). */
export const DIRECTIONS = /** @type {const} */ ({
  horizontal: { plus: 'eso', minus: 'exo' },
  vertical: { plus: 'right hyper', minus: 'left hyper' },
});

/**
 * "eso 40 Δ", or "none" for zero.
 * @param {Axis} axis
 * @param {number} pd
 */
export function deviationWords(axis, pd) {
  if (pd === 0) return 'none';
  return `${DIRECTIONS[axis][pd > 0 ? 'plus' : 'minus']} ${prismWords(pd)}`;
}

/**
 * The lines of a cell: what was measured, horizontal first; empty when nothing was. A zero names what was found to be none.
 * @param {Partial<Reading> | undefined} reading
 * @returns {{axis: Axis, text: string}[]}
 */
export function readingLines(reading) {
  /** @type {{axis: Axis, text: string}[]} */
  const lines = [];
  if (reading?.horizontal_pd != null) {
    lines.push({ axis: 'horizontal', text: lineWords('horizontal', reading.horizontal_pd) });
  }
  if (reading?.vertical_pd != null) {
    lines.push({ axis: 'vertical', text: lineWords('vertical', reading.vertical_pd) });
  }
  return lines;
}

/** @param {Axis} axis @param {number} pd */
const lineWords = (axis, pd) => (pd === 0 ? `no ${axis}` : deviationWords(axis, pd));

/** @type {Record<string, string>} */
export const GAZE_WORDS = {
  primary: 'primary',
  up: 'up',
  down: 'down',
  right: 'right gaze',
  left: 'left gaze',
  up_right: 'up and right',
  up_left: 'up and left',
  down_right: 'down and right',
  down_left: 'down and left',
  tilt_right: 'head tilt right',
  tilt_left: 'head tilt left',
};

/** @type {Record<string, string>} */
export const RANGE_WORDS = { distance: 'distance', near: 'near' };

/** @type {Record<string, string>} */
export const CORRECTION_WORDS = { with: 'with correction', without: 'without correction' };

/** "primary, distance". @param {Cell} cell */
export const cellWords = (cell) => `${GAZE_WORDS[cell.gaze]}, ${RANGE_WORDS[cell.range]}`;
