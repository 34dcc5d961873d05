/** What was measured in each gaze, as the engine counts it, for the picture. Nothing is computed here. */

/** @typedef {{raw_pd: number, corrected_pd: number, limits_pd: number, readings: number, steps: any[]}} Measure */
/** @typedef {{gaze: string, range: string, correction: string, condition: string, horizontal: Measure | null, vertical: Measure | null}} Measured */

/**
 * @param {Measured[]} measured
 * @param {{range: string, correction: string}} under
 * @returns {import('../../parts/nine-gaze/scale.js').Place[]}
 */
export const placesUnder = (measured, { range, correction }) =>
  measured
    .filter((each) => each.range === range && each.correction === correction && each.condition === 'plain')
    .map(({ gaze, horizontal, vertical }) => ({
      gaze,
      horizontal_pd: horizontal?.corrected_pd ?? null,
      vertical_pd: vertical?.corrected_pd ?? null,
      raw_pd: horizontal && horizontal.raw_pd !== horizontal.corrected_pd ? horizontal.raw_pd : null,
    }));
