/** What a folded part of the examination holds, in a few words. */
import { figureWords } from '../../../parts/figure-field/figure-words.js';
import { EYES, EYE_WORDS } from '../../../words/anatomy.js';
import { POSTURES } from './postures.js';
import { RANGES } from './ranges.js';

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

/** @typedef {import('../examination.js').Draft} Draft */

/** @param {string[]} told @param {string} none */
const listed = (told, none) => told.join(', ') || none;

/**
 * @param {(eye: import('../../../words/anatomy.js').Eye) => number | null} valueOf
 * @param {import('./ranges.js').Range} range
 * @param {string} [what] of the eye
 */
const perEye = (valueOf, range, what = '') =>
  EYES.flatMap((eye) => {
    const value = valueOf(eye);
    return value == null ? [] : [`${EYE_WORDS[eye]}${what} ${figureWords(value, range)}`];
  });

/** @param {Draft} draft */
export const lensWords = (draft) =>
  listed(
    [
      ...perEye((eye) => draft[`spectacles_${eye}_d`], RANGES.lens),
      ...(draft.pupil_distance_mm === null ? [] : [`pupils ${figureWords(draft.pupil_distance_mm, RANGES.pupils)}`]),
      ...perEye((eye) => draft[`axial_length_${eye}_mm`], RANGES.axial, ' axial'),
    ],
    'not said',
  );

/** @param {Draft} draft */
export const torsionWords = (draft) =>
  listed(
    [
      ...perEye((eye) => draft[`excyclotorsion_${eye}_deg`], RANGES.torsion),
      ...(draft.excyclotorsion_down_deg === null ? [] : [`down-gaze ${figureWords(draft.excyclotorsion_down_deg, RANGES.torsion)}`]),
    ],
    'not measured',
  );

/** @param {Draft} draft */
export const dissociatedWords = (draft) => listed(perEye((eye) => draft[`dvd_${eye}_pd`], RANGES.dissociated), 'not measured');

/** @param {Draft} draft */
export const ductionWords = ({ ductions, forced_ductions: forced }) =>
  listed(
    [
      ...(ductions.length ? [countWords(ductions.length, 'duction', 'ductions')] : []),
      ...(forced.length ? [countWords(forced.length, 'forced duction', 'forced ductions')] : []),
    ],
    'none',
  );

/** @param {Draft} draft */
export const postureWords = ({ head_posture: posture }) =>
  listed(
    POSTURES.flatMap(({ field, legend, words }) => {
      const way = posture?.[field];
      const degrees = posture?.[`${field}_deg`];
      return way ? [`${legend.toLowerCase()} ${words[way]}${degrees == null ? '' : ` ${figureWords(degrees, RANGES.posture)}`}`] : [];
    }),
    'none',
  );

/** @param {Draft} draft */
export const diagnosisWords = ({ diagnoses }) =>
  listed(diagnoses.map(({ diagnosis, eye }) => (eye ? `${diagnosis}, ${EYE_WORDS[eye]}` : diagnosis)), 'none');

/** @param {Draft} draft */
export function breakerWords({ conditions }) {
  const present = conditions.filter(({ presence }) => presence === 'present').map(({ breaker }) => breaker);
  const absent = conditions.filter(({ presence }) => presence === 'absent').length;
  return listed([...present, ...(absent ? [`${absent} absent`] : [])], 'not said');
}

/** All of the less common parts that hold something, in one line. @param {Draft} draft */
export const lessOftenWords = (draft) =>
  [diagnosisWords, postureWords, torsionWords, ductionWords, dissociatedWords, breakerWords]
    .map((words) => words(draft))
    .filter((words) => !['none', 'not measured', 'not said'].includes(words))
    .join(' \u00b7 ') || 'none';
