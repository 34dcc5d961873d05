/** The order in which a horizontal examination is usually taken, so that the next cell can offer itself. */

import { readingAt } from './cells.js';

/** @typedef {import('../../words/reading.js').Cell} Cell */
/** @typedef {import('../../words/reading.js').Reading} Reading */

const USUAL = [
  { gaze: 'primary', range: 'distance' },
  { gaze: 'primary', range: 'near' },
  { gaze: 'up', range: 'distance' },
  { gaze: 'down', range: 'distance' },
];

/**
 * The next usual place that has no reading yet: first those after `from`, then those before it; null when all are read.
 * @param {Reading[]} readings
 * @param {Cell} from
 * @returns {Cell | null}
 */
export function nextUsual(readings, from) {
  const at = USUAL.findIndex(({ gaze, range }) => gaze === from.gaze && range === from.range);
  const round = [...USUAL.slice(at + 1), ...USUAL.slice(0, at + 1)];
  const cells = round.map((place) => ({ ...place, correction: from.correction }));
  return cells.find((cell) => !readingAt(readings, cell) && !(cell.gaze === from.gaze && cell.range === from.range)) ?? null;
}

/** Where an examination begins. @param {string} correction @returns {Cell} */
export const firstUsual = (correction) => ({ ...USUAL[0], correction });
