/** A prediction in words. */
import { GAP } from '../../words/figures.js';

/** @typedef {{range: string, mean_pd: number, low_pd: number, high_pd: number, within_pd: number, within_percent: number, undercorrected_percent: number, overcorrected_percent: number}} Outcome */
/** @typedef {{distance: Outcome | null, near: Outcome | null, steps: any[]}} Prediction */

/** "71 %"; what is almost never or almost always is said so. @param {number} percent */
export function percentWords(percent) {
  const whole = Math.round(percent);
  if (whole === 0 && percent > 0) return `under 1${GAP}%`;
  if (whole === 100 && percent < 100) return `over 99${GAP}%`;
  return `${whole}${GAP}%`;
}

/** @param {Outcome} outcome */
export const chanceWords = ({ within_pd, within_percent, undercorrected_percent, overcorrected_percent }) =>
  `Within ${within_pd} Δ of straight ${percentWords(within_percent)}, undercorrected ${percentWords(undercorrected_percent)}, overcorrected ${percentWords(overcorrected_percent)}`;

/**
 * The outcome in the position that the plan aims at, or null.
 * @param {Prediction | null} prediction
 * @param {string} aim
 */
export const mainOutcome = (prediction, aim) => (prediction ? (aim === 'near' ? prediction.near : prediction.distance) ?? prediction.distance ?? prediction.near : null);

/** How far a strip must reach for it. @param {any} option @returns {number[]} */
export function reachedBy({ expected_residual_pd, answers = 'horizontal', prediction = null }) {
  if (answers !== 'horizontal') return [];
  const main = mainOutcome(prediction, 'distance');
  return [expected_residual_pd, ...(main ? [main.low_pd, main.high_pd] : [])];
}
