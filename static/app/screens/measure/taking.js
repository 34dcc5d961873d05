/** How the next readings are taken: it holds from one reading to the next until it is changed. */

/** @typedef {import('../../words/reading.js').Cell} Cell */
/** @typedef {import('../../words/taking.js').Technique} Technique */
/** @typedef {{method: string, condition: string, technique: Technique | null}} Taking `technique` null: the prisms as they are labelled */

/** @type {Taking} */
export const USUAL_TAKING = { method: 'prism cover', condition: 'plain', technique: null };

/** @type {Technique} */
const AS_A_RULE = { material: 'acrylic', held: 'frontal', arrangement: 'one' };

/**
 * What a new reading begins with: material and position go from one to the next, the labels of a second prism do not, and
 * the distance of the prism only among readings at near.
 * @param {Taking} taking
 * @param {Cell} cell
 * @returns {Technique | null}
 */
export function techniqueOfNext({ technique }, { range, method }) {
  if (!technique || method === 'light reflex') return null;
  const { material, held, prism_from_cornea_mm: away } = technique;
  return { material, held, arrangement: 'one', ...(range === 'near' && away != null ? { prism_from_cornea_mm: away } : {}) };
}

/**
 * The technique with some of it said anew; without a second prism its labels go too.
 * @param {Technique | null} technique
 * @param {Partial<Technique>} fields
 * @returns {Technique}
 */
export function techniqueWith(technique, fields) {
  const next = { ...AS_A_RULE, ...technique, ...fields };
  return next.arrangement === 'one' ? { ...next, horizontal_second_pd: null, vertical_second_pd: null } : next;
}

/** Whether two prisms share it and neither label of the second is said. @param {{technique?: Partial<Technique> | null}} reading */
export const lacksSecond = ({ technique }) =>
  (technique?.arrangement ?? 'one') !== 'one' && technique?.horizontal_second_pd == null && technique?.vertical_second_pd == null;
