/** What the storage line says, decided from the state of sync and of the log-in alone. */
import { agoWords } from '../calendar/ago.js';
import { say } from '../../words/say.js';

/**
 * @typedef {object} StorageWords
 * @property {"attention" | "saved" | "sent"} mark
 * @property {string} state the state in words with its count: what is announced when it changes
 * @property {string} more ages: of the oldest that waits, and of the last word from the clinic
 *
 * @param {{waiting: number, attention: number, oldestWaitingAt: string | null, lastHeard: string | null, error?: {code: string} | null}} sync
 * @param {'unknown' | 'signed-in' | 'expired'} login
 * @param {number} nowMs
 * @returns {StorageWords}
 */
export function storageWords(sync, login, nowMs) {
  const heard = login === 'expired' ? say('sign in to send and fetch') : isTooOld(sync) ? say('update the app to send') : sync.lastHeard ? say('clinic heard {ago}', { ago: agoWords(sync.lastHeard, nowMs) }) : say('clinic not heard yet');
  const oldest = sync.waiting > 0 && sync.oldestWaitingAt ? say('oldest {ago}', { ago: agoWords(sync.oldestWaitingAt, nowMs) }) : '';
  if (sync.attention > 0) {
    const also = sync.waiting > 0 ? say('{count} more saved', { count: sync.waiting }) : '';
    return { mark: 'attention', state: say('Needs attention: {count}', { count: sync.attention }), more: listed(also, heard) };
  }
  if (sync.waiting > 0) return { mark: 'saved', state: say('Saved on this phone: {count}', { count: sync.waiting }), more: listed(oldest, heard) };
  return { mark: 'sent', state: say('Sent'), more: heard };
}

/** @param {{error?: {code: string} | null}} sync */
const isTooOld = ({ error }) => error?.code === 'client_too_old';

/** @param {string[]} facts */
function listed(...facts) {
  return facts.filter(Boolean).join(' · ');
}
