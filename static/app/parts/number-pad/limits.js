/**
 * What the pads let through: the limits of the engine's codec, which has the last word (its `check` refuses too).
 * tests/static/number-pad/pad-limits.test.js holds them to planner/records.
 */
export const LIMITS = {
  horizontal_pd: { low: -150, high: 150 },
  vertical_pd: { low: -80, high: 80 },
  second_pd: { low: 0, high: 100 },
  prism_from_cornea_mm: { low: 0, high: 150 },
  dose_mm: { low: 0.5, high: 20 },
  from_limbus_mm: { low: 0, high: 30 },
  moved_mm: { low: 0.5, high: 10 },
  overcorrection_pd: { low: 0, high: 15 },
  previous_mm: { low: 0, high: 20 },
  year: { low: 1900, high: 2200 },
  lens_d: { low: -20, high: 20 },
  pupil_distance_mm: { low: 40, high: 80 },
  axial_length_mm: { low: 15, high: 40 },
  torsion_deg: { low: -40, high: 40 },
  dvd_pd: { low: 0, high: 60 },
  posture_deg: { low: 0, high: 60 },
  stereo_octaves_lost: { low: 0, high: 12 },
};
