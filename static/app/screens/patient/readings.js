/** The readings that tell a case apart at a glance: the primary position at distance and near. */
import { readingLines } from '../../words/reading.js';
import { unusualWords } from '../../words/taking.js';

const CORRECTION = { with: 'with correction', without: 'without correction' };

/**
 * @param {import('../../words/reading.js').Reading[]} readings
 * @returns {{label: string, words: string}[]} distance first, with correction first
 */
export function mainReadings(readings) {
  return ['distance', 'near'].flatMap((range) =>
    ['with', 'without'].flatMap((correction) =>
      readings
        .filter((reading) => reading.gaze === 'primary' && reading.range === range && reading.correction === correction)
        .map((reading) => ({
          label: [range === 'distance' ? 'Distance' : 'Near', CORRECTION[correction], ...unusualWords(reading)].join(', '),
          words: readingLines(reading).map(({ text }) => text).join(', '),
        })),
    ),
  );
}
