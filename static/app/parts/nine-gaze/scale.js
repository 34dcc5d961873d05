/** Where a deviation lies in the small drawing of one gaze: exo to the left, eso to the right, right hyper up. */

export const WIDTH = 96;
export const HEIGHT = 56;
const MARGIN_X = 6;
const MARGIN_Y = 6;

/** The least that a drawing shows, so that the band of 10 Δ always has room around it. */
const LEAST_PD = 20;

/**
 * @typedef {object} Place one gaze, all figures in Δ: eso +, right hyper +
 * @property {string} gaze
 * @property {number | null} [horizontal_pd]
 * @property {number | null} [vertical_pd]
 * @property {number | null} [raw_pd] of the horizontal, where it was read otherwise
 * @property {{mean_pd: number, low_pd: number, high_pd: number} | null} [after] the horizontal expected after surgery
 */

/**
 * How far the drawings reach to every side, the same for all gazes: far enough for all figures, in steps of ten.
 * @param {Place[]} places
 */
export function reachOf(places) {
  const figures = places.flatMap(({ horizontal_pd, vertical_pd, after }) => [horizontal_pd ?? 0, vertical_pd ?? 0, after?.low_pd ?? 0, after?.high_pd ?? 0]);
  return Math.max(LEAST_PD, ...figures.map((pd) => Math.ceil(Math.abs(pd) / 10) * 10));
}

/** @param {number} pd @param {number} reach_pd */
export const acrossOf = (pd, reach_pd) => WIDTH / 2 + (pd / reach_pd) * (WIDTH / 2 - MARGIN_X);

/**
 * As many units of the drawing for a Δ as across, so that a slant is seen as it is; what is higher than that ends at the edge.
 * @param {number} pd
 * @param {number} reach_pd
 */
export function upOf(pd, reach_pd) {
  const away = (pd / reach_pd) * (WIDTH / 2 - MARGIN_X);
  const most = HEIGHT / 2 - MARGIN_Y;
  return HEIGHT / 2 - Math.max(-most, Math.min(most, away));
}
