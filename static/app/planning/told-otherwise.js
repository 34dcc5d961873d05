/** What theatre must know of a patient, where two entries of one person say it differently. Pure. */

/** @typedef {{field: string, words: string, own: string, other: string}} Difference */

const FACTS = [
  { field: 'allergies', words: 'Allergies', lacking: 'none entered' },
  { field: 'latex', words: 'Latex not borne', lacking: 'not asked' },
  { field: 'anticoagulants', words: 'Anticoagulants', lacking: 'none entered' },
  { field: 'malignant_hyperthermia_family', words: 'Malignant hyperthermia in the family', lacking: 'not asked' },
];

/**
 * @param {any} own body of a patient's record
 * @param {any} other body of the other entry's
 * @returns {Difference[]}
 */
export function toldOtherwise(own, other) {
  return FACTS.map(({ field, words, lacking }) => {
    const [here, there] = [own, other].map((body) => (body?.[field] ?? '').trim());
    return { field, words, own: told(here) || lacking, other: told(there) || lacking };
  }).filter((fact) => fact.own !== fact.other);
}

/** @param {string} value */
const told = (value) => (value === 'unknown' ? '' : value);
