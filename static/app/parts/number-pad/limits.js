/**
 * What the pads let through: the limits of the engine's codec, which has the last word (its `check` refuses too).
 * tests/static/pad-limits.test.js holds them to planner/records.
 */
export const LIMITS = {
  horizontal_pd: { low: -150, high: 150 },
  vertical_pd: { low: -80, high: 80 },
  dose_mm: { low: 0.5, high: 20 },
  previous_mm: { low: 0, high: 20 },
  year: { low: 1900, high: 2200 },
};
