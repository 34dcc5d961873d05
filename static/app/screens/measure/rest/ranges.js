/** The figures that may be told beside the readings: their limits, decimals, units and directions in words. */
import { LIMITS } from '../../../parts/number-pad/limits.js';

/** @typedef {import('../../../parts/number-pad/figure-entry.js').Range} Range */

/** @type {Record<'lens' | 'pupils' | 'axial' | 'torsion' | 'dissociated' | 'posture', Range>} */
export const RANGES = {
  lens: { ...LIMITS.lens_d, decimals: 2, unit: 'D', signs: { plus: 'plus', minus: 'minus' } },
  pupils: { ...LIMITS.pupil_distance_mm, decimals: 1, unit: 'mm' },
  axial: { ...LIMITS.axial_length_mm, decimals: 2, unit: 'mm' },
  torsion: { ...LIMITS.torsion_deg, decimals: 1, unit: '\u00b0', signs: { plus: 'excyclo', minus: 'incyclo' } },
  dissociated: { ...LIMITS.dvd_pd, decimals: 1, unit: '\u0394' },
  posture: { ...LIMITS.posture_deg, decimals: 0, unit: '\u00b0' },
};
