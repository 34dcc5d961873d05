/** What a step still lacks, in words; undefined when it may be handed to the engine. */
import { dateParts } from '../../parts/calendar/date.js';

/** @typedef {Record<string, any>} Held */

/**
 * @param {any} step of the engine
 * @param {Held} held
 * @returns {string | undefined}
 */
export function missingIn(step, held) {
  switch (step.way) {
    case 'wristband':
      if (!has(held.hospital_number)) return 'The number on the wristband is not typed yet.';
      return dateParts(held.born_on ?? '') ? undefined : 'The date of birth on the wristband is not typed yet.';
    case 'wristband number':
      return has(held.hospital_number) ? undefined : 'The number on the wristband is not typed yet.';
    case 'paper':
      return has(held.check_word) ? undefined : 'The check word on the paper is not typed yet.';
    case 'consent':
      return held.consented?.length ? undefined : 'No muscle is entered yet.';
    case 'mark':
      return held.marked ? undefined : 'Say which eye is marked.';
    default:
      return missingAnswer(step, held);
  }
}

/**
 * @param {Held} held
 * @returns {string | undefined}
 */
export function missingInMember(held) {
  if ((held.name ?? '').trim().length < 2) return 'The name is not typed yet.';
  return held.role ? undefined : 'Say which role it is.';
}

/**
 * @param {Held} held
 * @returns {string | undefined}
 */
export function missingInGoingOn(held) {
  if ((held.surgeon ?? '').trim().length < 2) return 'The surgeon’s name is not typed yet.';
  return (held.reason ?? '').trim().length < 3 ? 'The reason is not typed yet.' : undefined;
}

/**
 * @param {any} step
 * @param {Held} held
 */
function missingAnswer(step, held) {
  const answer = step.answers.find((/** @type {any} */ each) => each.value === held.answer);
  if (!answer) return 'Choose an answer.';
  return answer.effect === 'tell' && !has(held.words) ? 'Say what it is.' : undefined;
}

/** @param {string} [text] */
const has = (text = '') => text.trim() !== '';
