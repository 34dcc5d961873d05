/** The fields of records as a person calls them. */

/** @type {Record<string, string>} */
export const FIELD_WORDS = {
  full_name: 'Full name',
  born_on: 'Birth date',
  hospital_number: 'Hospital number',
  sex: 'Sex',
  allergies: 'Allergies',
  note: 'Note',
  examined_on: 'Examined on',
  fixing_eye: 'Fixing eye',
  constancy: 'Constant or not',
  acuity_right: 'Acuity, RIGHT eye',
  acuity_left: 'Acuity, LEFT eye',
  spectacles_right_d: 'Lens, RIGHT eye, dioptres',
  spectacles_left_d: 'Lens, LEFT eye, dioptres',
  pupil_distance_mm: 'Pupil distance, mm',
  axial_length_right_mm: 'Axial length, RIGHT eye, mm',
  axial_length_left_mm: 'Axial length, LEFT eye, mm',
  excyclotorsion_right_deg: 'Excyclotorsion, RIGHT eye, degrees',
  excyclotorsion_left_deg: 'Excyclotorsion, LEFT eye, degrees',
  excyclotorsion_down_deg: 'Excyclotorsion of both in down-gaze, degrees',
  dvd_right_pd: 'Drift up under cover, RIGHT eye, Δ',
  dvd_left_pd: 'Drift up under cover, LEFT eye, Δ',
  engine_version: 'Engine version',
  reason: 'Reason',
  needle: 'Needle',
  operated_on: 'Operated on',
  tied_at: 'Suture tied',
  block_at: 'Last local block',
  block_wait_h: 'Hours waited after a block',
  adjusted_at: 'Adjusted',
};

/**
 * @param {string} path as in a fault, for example `body.born_on`
 * @returns {string} the last named step in words, or an empty text where it has none
 */
export function fieldWords(path) {
  const steps = path.split('.').reverse();
  return FIELD_WORDS[steps.find((step) => FIELD_WORDS[step]) ?? ''] ?? '';
}
