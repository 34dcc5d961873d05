/** The order in which an examination is usually taken, so that the next place can offer itself. */

import { readingsIn } from './cells.js';

/** @typedef {import('../../words/reading.js').Cell} Cell */
/** @typedef {import('../../words/reading.js').Reading} Reading */

const AT_DISTANCE = { gaze: 'primary', range: 'distance' };
const AT_NEAR = { gaze: 'primary', range: 'near' };

/** Lenses of +3.00 are for near, of -3.00 for distance. @type {Record<string, {gaze: string, range: string}[]>} */
const USUAL = {
  plain: [AT_DISTANCE, AT_NEAR, { gaze: 'up', range: 'distance' }, { gaze: 'down', range: 'distance' }],
  'after patching': [AT_DISTANCE, AT_NEAR],
  'through +3.00': [AT_NEAR],
  'through -3.00': [AT_DISTANCE],
  'prism adapted': [AT_DISTANCE, AT_NEAR],
};

/**
 * The next usual place that has no reading yet: first those after `from`, then those before it; null when all are read.
 * @param {Reading[]} readings
 * @param {Cell} from
 * @returns {Cell | null}
 */
export function nextUsual(readings, from) {
  const usual = USUAL[from.condition ?? 'plain'];
  const at = usual.findIndex(({ gaze, range }) => gaze === from.gaze && range === from.range);
  const round = [...usual.slice(at + 1), ...usual.slice(0, at + 1)];
  const cells = round.map((place) => ({ ...place, correction: from.correction, condition: from.condition }));
  return cells.find((cell) => readingsIn(readings, cell).length === 0 && !(cell.gaze === from.gaze && cell.range === from.range)) ?? null;
}

/** Where an examination begins. @param {string} correction @param {string} condition @returns {Cell} */
export const firstUsual = (correction, condition) => ({ ...USUAL[condition][0], correction, condition });
