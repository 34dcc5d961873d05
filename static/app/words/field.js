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
  acuity_right: 'Acuity, RIGHT eye',
  acuity_left: 'Acuity, LEFT eye',
  engine_version: 'Engine version',
};

/**
 * @param {string} path as in a fault, for example `body.born_on`
 * @returns {string} the last named step in words, or an empty text where it has none
 */
export function fieldWords(path) {
  const steps = path.split('.').reverse();
  return FIELD_WORDS[steps.find((step) => FIELD_WORDS[step]) ?? ''] ?? '';
}
