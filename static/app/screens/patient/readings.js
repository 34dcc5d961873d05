/** The readings that tell a case apart at a glance: the primary position at distance and near. */
import { readingLines } from '../../words/reading.js';

const CORRECTION = { with: 'with correction', without: 'without correction' };

/**
 * @param {{gaze: string, range: string, correction: string, horizontal_pd?: number | null, vertical_pd?: number | null}[]} readings
 * @returns {{label: string, words: string}[]} distance first, with correction first
 */
export function mainReadings(readings) {
  return ['distance', 'near'].flatMap((range) =>
    ['with', 'without'].flatMap((correction) =>
      readings
        .filter((reading) => reading.gaze === 'primary' && reading.range === range && reading.correction === correction)
        .map((reading) => ({
          label: `${range === 'distance' ? 'Distance' : 'Near'}, ${CORRECTION[correction]}`,
          words: readingLines(reading).map(({ text }) => text).join(', '),
        })),
    ),
  );
}
