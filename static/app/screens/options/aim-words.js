/** The angles that a plan may aim at, by the engine's names (planner/records/case.py, `Aim`). */

/** @type {Record<string, {words: string, range: string, condition: string}>} */
export const AIMS = {
  distance: { words: 'at distance', range: 'distance', condition: 'plain' },
  'after patching': { words: 'after patching', range: 'distance', condition: 'after patching' },
  'prism adapted': { words: 'prism adapted', range: 'distance', condition: 'prism adapted' },
  near: { words: 'at near', range: 'near', condition: 'plain' },
};

/**
 * Whether there is a reading that it names; the engine has the last word.
 * @param {{readings: import('../../words/reading.js').Reading[]}} examination
 * @param {string} aim
 */
export const isMeasured = ({ readings }, aim) =>
  readings.some(({ gaze, range, condition = 'plain' }) => gaze === 'primary' && range === AIMS[aim].range && condition === AIMS[aim].condition);
