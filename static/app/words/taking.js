/** How a reading was taken, in words. The keys are the engine's (planner/records/technique.py). */

/** @typedef {'prism cover' | 'prism reflex' | 'light reflex'} Method */
/** @typedef {'plain' | 'after patching' | 'through +3.00' | 'through -3.00' | 'prism adapted'} Condition */
/** @typedef {'glass' | 'acrylic'} Material */
/** @typedef {'frontal' | 'prentice' | 'minimum deviation'} Held */
/** @typedef {'one' | 'split' | 'stacked'} Arrangement */
/**
 * @typedef {object} Technique
 * @property {Material} material
 * @property {Held} held
 * @property {Arrangement} arrangement
 * @property {number | null} [horizontal_second_pd]
 * @property {number | null} [vertical_second_pd]
 * @property {number | null} [prism_from_cornea_mm]
 */

/** @type {Record<Method, string>} */
export const METHOD_WORDS = { 'prism cover': 'prism cover test', 'prism reflex': 'prism reflex test', 'light reflex': 'light reflex test' };

/** @type {Record<Condition, string>} */
export const CONDITION_WORDS = {
  plain: 'plain',
  'after patching': 'after patching',
  'through +3.00': 'through +3.00',
  'through -3.00': 'through \u22123.00',
  'prism adapted': 'prism adapted',
};

/** @type {Record<Material, string>} */
export const MATERIAL_WORDS = { acrylic: 'plastic', glass: 'glass' };

/** @type {Record<Held, string>} */
export const HELD_WORDS = { frontal: 'frontal plane', prentice: 'square to the line of sight', 'minimum deviation': 'minimum deviation' };

/** @type {Record<Arrangement, string>} */
export const ARRANGEMENT_WORDS = { one: 'one prism', split: 'one before each eye', stacked: 'two before one eye' };

/**
 * What is not as usual about a reading, in the order in which it matters; empty for a plain prism cover test with the
 * prisms as they are labelled.
 * @param {{method?: string, condition?: string, technique?: Partial<Technique> | null, repeat?: number}} reading
 * @returns {string[]}
 */
export function unusualWords({ method = 'prism cover', condition = 'plain', technique = null, repeat = 1 }) {
  return [
    ...(condition === 'plain' ? [] : [CONDITION_WORDS[condition]]),
    ...(method === 'prism cover' ? [] : [METHOD_WORDS[method]]),
    ...(technique && method !== 'light reflex' ? techniqueWords(technique) : []),
    ...(repeat === 1 ? [] : [`reading ${repeat}`]),
  ];
}

/** @param {Partial<Technique>} technique @returns {string[]} */
function techniqueWords({ material = 'acrylic', held = 'frontal', arrangement = 'one', prism_from_cornea_mm = null }) {
  return [
    `${MATERIAL_WORDS[material]}, ${HELD_WORDS[held]}`,
    ...(arrangement === 'one' ? [] : [ARRANGEMENT_WORDS[arrangement]]),
    ...(prism_from_cornea_mm === null ? [] : [`${prism_from_cornea_mm}\u202fmm from the cornea`]),
  ];
}
