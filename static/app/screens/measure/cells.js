/**
 * The readings of an examination as a list. A place on the map is a gaze under one range, correction and condition; there
 * may be several readings in it, by other methods or taken again. The list keeps one order whatever the order of
 * touching, so that the same measurements make the same record.
 */
import { CONDITION_WORDS, METHOD_WORDS } from '../../words/taking.js';

/** @typedef {import('../../words/reading.js').Cell} Cell */
/** @typedef {import('../../words/reading.js').Reading} Reading */
/** @typedef {import('../../words/taking.js').Technique} Technique */
/** @typedef {{horizontal_pd: number | null, vertical_pd: number | null}} Figures */

const GAZES = [
  'primary', 'up', 'down', 'right', 'left', 'up_right', 'up_left', 'down_right', 'down_left', 'tilt_right', 'tilt_left',
];
const RANGES = ['distance', 'near'];
const CORRECTIONS = ['with', 'without'];
const CONDITIONS = Object.keys(CONDITION_WORDS);
const METHODS = Object.keys(METHOD_WORDS);

/** As many as the engine tells apart. */
const MOST_REPEATS = 9;

/** @param {Cell} cell @returns {Required<Cell>} */
export const wholeCell = ({ gaze, range, correction, condition = 'plain', method = 'prism cover', repeat = 1 }) => ({ gaze, range, correction, condition, method, repeat });

/** What a record says of it: the usual is left out. @param {Cell} cell @returns {Cell} */
function briefCell(cell) {
  const { gaze, range, correction, condition, method, repeat } = wholeCell(cell);
  return {
    gaze,
    range,
    correction,
    ...(condition === 'plain' ? {} : { condition }),
    ...(method === 'prism cover' ? {} : { method }),
    ...(repeat === 1 ? {} : { repeat }),
  };
}

/**
 * Where the reading stands among all that can be taken; the same number is the same reading.
 * @param {Cell} cell
 */
function order(cell) {
  const { gaze, range, correction, condition, method, repeat } = wholeCell(cell);
  const steps = [
    [CONDITIONS.indexOf(condition), CONDITIONS.length],
    [CORRECTIONS.indexOf(correction), CORRECTIONS.length],
    [RANGES.indexOf(range), RANGES.length],
    [GAZES.indexOf(gaze), GAZES.length],
    [METHODS.indexOf(method), METHODS.length],
    [repeat, MOST_REPEATS + 1],
  ];
  return steps.reduce((sum, [at, count]) => sum * count + at, 0);
}

/**
 * @param {Cell} one
 * @param {Cell} other
 */
export const sameCell = (one, other) => order(one) === order(other);

/** @param {Cell} cell */
const placeOf = (cell) => order({ ...cell, method: 'prism cover', repeat: 1 });

/**
 * @param {Reading[]} readings
 * @param {Cell} cell
 */
export const readingAt = (readings, cell) => readings.find((reading) => sameCell(reading, cell));

/**
 * Every reading in the cell's place: the most exact method first, then in the order they were taken.
 * @param {Reading[]} readings
 * @param {Cell} cell
 */
export const readingsIn = (readings, cell) =>
  readings.filter((reading) => placeOf(reading) === placeOf(cell)).sort((one, other) => order(one) - order(other));

/** Whether anything was read there. @param {Partial<Reading> | undefined} reading */
export const isRead = (reading) => reading?.horizontal_pd != null || reading?.vertical_pd != null;

/**
 * The readings with one set anew, or taken out when neither figure is given.
 * @param {Reading[]} readings
 * @param {Cell} cell
 * @param {Figures} figures
 * @param {Technique | null} [technique] of a reading that is not there yet
 * @returns {Reading[]}
 */
export function withReading(readings, cell, figures, technique = null) {
  const before = readingAt(readings, cell);
  if (!isRead(figures)) return readings.filter((other) => other !== before);
  if (before) return readings.map((other) => (other === before ? { ...before, ...figures } : other));
  const reading = { ...briefCell(cell), ...figures, ...(technique ? { technique } : {}) };
  return [...readings, reading].sort((one, other) => order(one) - order(other));
}

/**
 * The readings with the technique of one set anew.
 * @param {Reading[]} readings
 * @param {Cell} cell
 * @param {Technique | null} technique
 * @returns {Reading[]}
 */
export const withTechnique = (readings, cell, technique) =>
  readings.map((reading) => (sameCell(reading, cell) ? { ...reading, technique } : reading));

/**
 * The cell of one more reading of the same thing, or null when as many were taken as can be told apart.
 * @param {Reading[]} readings
 * @param {Cell} cell
 * @returns {Cell | null}
 */
export function repeated(readings, cell) {
  const repeats = Array.from({ length: MOST_REPEATS }, (_, index) => ({ ...cell, repeat: index + 1 }));
  return repeats.find((one) => !readingAt(readings, one)) ?? null;
}

/**
 * How many places were read under these conditions.
 * @param {Reading[]} readings
 * @param {{range: string, correction: string, condition: string}} conditions
 */
export function countUnder(readings, { range, correction, condition }) {
  const under = readings.map(wholeCell).filter((cell) => cell.range === range && cell.correction === correction && cell.condition === condition);
  return new Set(under.map(({ gaze }) => gaze)).size;
}
