/**
 * The readings of an examination as a list with one place on the map for each gaze, range and correction.
 *
 * A place holds the plain reading taken there: first of its kind, by prism cover test, under no special condition. Any other
 * reading of the list has no place here and is left as it is. The list keeps one order whatever the order of touching, so
 * that the same measurements make the same record.
 */

/** @typedef {import('../../words/reading.js').Cell} Cell */
/** @typedef {import('../../words/reading.js').Reading} Reading */

const GAZES = [
  'primary', 'up', 'down', 'right', 'left', 'up_right', 'up_left', 'down_right', 'down_left', 'tilt_right', 'tilt_left',
];
const RANGES = ['distance', 'near'];
const CORRECTIONS = ['with', 'without'];

/** @param {Cell} cell */
export const cellKey = ({ gaze, range, correction }) => `${gaze}/${range}/${correction}`;

/**
 * @param {Cell} one
 * @param {Cell} other
 */
export const sameCell = (one, other) => cellKey(one) === cellKey(other);

/** @param {Reading} reading */
const isPlain = ({ method = 'prism cover', condition = 'plain', repeat = 1 }) => method === 'prism cover' && condition === 'plain' && repeat === 1;

/**
 * @param {Reading[]} readings
 * @param {Cell} cell
 */
export const readingAt = (readings, cell) => readings.find((reading) => isPlain(reading) && sameCell(reading, cell));

/** Whether anything was read there. @param {Partial<Reading> | undefined} reading */
export const isRead = (reading) => reading?.horizontal_pd != null || reading?.vertical_pd != null;

/**
 * The readings with one place set anew, or emptied when neither figure is given.
 * @param {Reading[]} readings
 * @param {Cell} cell
 * @param {{horizontal_pd: number | null, vertical_pd: number | null}} figures
 * @returns {Reading[]}
 */
export function withReading(readings, cell, figures) {
  const before = readingAt(readings, cell);
  const { gaze, range, correction } = cell;
  const reading = { ...before, gaze, range, correction, ...figures };
  if (!isRead(reading)) return readings.filter((other) => other !== before);
  if (before) return readings.map((other) => (other === before ? reading : other));
  return [...readings, reading].sort(byPlace);
}

/**
 * How many readings were taken under these conditions.
 * @param {Reading[]} readings
 * @param {{range: string, correction: string}} conditions
 */
export const countUnder = (readings, { range, correction }) =>
  readings.filter((reading) => isPlain(reading) && reading.range === range && reading.correction === correction).length;

/** @param {Cell} cell */
const place = ({ gaze, range, correction }) =>
  CORRECTIONS.indexOf(correction) * 100 + RANGES.indexOf(range) * 50 + GAZES.indexOf(gaze);

/**
 * @param {Cell} one
 * @param {Cell} other
 */
const byPlace = (one, other) => place(one) - place(other);
