/** Where a deviation lies on the strip: exo to the left of straight, eso to the right, in units of the drawing. */

import { deviationWords } from '../../words/reading.js';

export const WIDTH = 360;
const MARGIN = 16;

/** The least that a strip shows to each side, so that the band of 10 Δ always has room around it. */
const LEAST_PD = 20;

/**
 * How far a strip reaches to each side: far enough for all that are compared, in steps of ten.
 * @param {number[]} residuals_pd
 */
export const reachOf = (residuals_pd) => Math.max(LEAST_PD, ...residuals_pd.map((pd) => Math.ceil((Math.abs(pd) + 1) / 10) * 10));

/**
 * @param {number} pd eso +, exo -
 * @param {number} reach_pd
 */
export const placeOf = (pd, reach_pd) => WIDTH / 2 + (pd / reach_pd) * (WIDTH / 2 - MARGIN);

/** "exo 9 Δ and eso 15 Δ". @param {{low_pd: number, high_pd: number}} interval */
export const spanWords = ({ low_pd, high_pd }) => [low_pd, high_pd].map((pd) => (pd === 0 ? 'straight' : deviationWords('horizontal', pd))).join(' and ');
