/**
 * The state of signing as one value, kept as a draft: which cautions were acknowledged, what was drawn, how it compared.
 *
 * The stages follow each other and the later ones open only when the earlier are done:
 * cautions (one by one), draw (the plan again, from the mind), differs (shown beside the plan), sign.
 */

import { cautionsOf } from '../../planning/levels.js';

/** @typedef {{operation: string, offset?: 'up' | 'down' | null}} Done `offset`: where the tendon is moved to */
/** @typedef {{eye: string, muscle: string} & Done} Drawn */
/** @typedef {{equal: boolean, missing: Drawn[], unexpected: Drawn[]}} Comparison */
/** @typedef {{acknowledged: string[], drawn: Drawn[], comparison: Comparison | null}} Signing */
/** @typedef {'cautions' | 'draw' | 'differs' | 'sign'} Stage */

/** @type {Signing} */
export const UNSIGNED = { acknowledged: [], drawn: [], comparison: null };

/**
 * The cautions still to acknowledge, in the engine's order; one entry for each code.
 * @param {any} option
 * @param {Signing} signing
 */
export function cautionsLeft(option, { acknowledged }) {
  const cautions = cautionsOf(option);
  return cautions.filter(({ code }, index) => !acknowledged.includes(code) && cautions.findIndex((other) => other.code === code) === index);
}

/**
 * @param {any} option of the plan
 * @param {Signing} signing
 * @returns {Stage}
 */
export function stageOf(option, signing) {
  if (cautionsLeft(option, signing).length > 0) return 'cautions';
  if (signing.comparison === null) return 'draw';
  return signing.comparison.equal ? 'sign' : 'differs';
}

/**
 * @param {Signing} signing
 * @param {string} code
 * @returns {Signing}
 */
export const acknowledge = (signing, code) => ({ ...signing, acknowledged: [...signing.acknowledged, code] });

/**
 * The drawing with one muscle said anew, or taken out (`null`); what was compared before no longer holds.
 * @param {Signing} signing
 * @param {{eye: string, muscle: string}} place
 * @param {Done | null} done
 * @returns {Signing}
 */
export function draw(signing, { eye, muscle }, done) {
  const others = signing.drawn.filter((drawn) => drawn.eye !== eye || drawn.muscle !== muscle);
  return { ...signing, drawn: done === null ? others : [...others, drawnOf(eye, muscle, done)], comparison: null };
}

/**
 * A tendon that stays in its line is not mentioned, so that a plain drawing is the same record as ever.
 * @param {string} eye
 * @param {string} muscle
 * @param {Done} done
 * @returns {Drawn}
 */
const drawnOf = (eye, muscle, { operation, offset }) => (offset ? { eye, muscle, operation, offset } : { eye, muscle, operation });

/**
 * @param {Signing} signing
 * @param {Comparison} comparison
 * @returns {Signing}
 */
export const compared = (signing, comparison) => ({ ...signing, comparison });

/** An empty picture again. @param {Signing} signing @returns {Signing} */
export const drawAgain = (signing) => ({ ...signing, drawn: [], comparison: null });
