/** What a folded part of the examination holds, in a few words. */
import { EYES, EYE_WORDS } from '../../words/anatomy.js';

/** @param {string | null} eye */
export function fixingWords(eye) {
  if (eye === null) return 'not said';
  return eye === 'either' ? 'either eye' : EYE_WORDS[/** @type {'right' | 'left'} */ (eye)];
}

/** @param {{acuity_right: string | null, acuity_left: string | null}} draft */
export function acuityWords(draft) {
  const told = EYES.filter((eye) => draft[`acuity_${eye}`]).map((eye) => `${EYE_WORDS[eye]} ${draft[`acuity_${eye}`]}`);
  return told.join(', ') || 'not measured';
}

/**
 * @param {number} count
 * @param {string} one
 * @param {string} several
 */
export const countWords = (count, one, several) => (count === 0 ? 'none' : `${count} ${count === 1 ? one : several}`);
