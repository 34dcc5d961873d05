/** The time in which an adjustable suture is adjusted, as it stands at a moment: worked out from stored times, never counted. */
import { today } from '../calendar/date.js';
import { momentWords } from '../calendar/ago.js';

const MINUTE_MS = 60_000;

/** @typedef {{earliest_at: string, latest_at: string}} Window */
/** @typedef {'early' | 'now' | 'late'} Phase */

/**
 * @param {Window} window
 * @param {number} now_ms
 * @returns {Phase}
 */
export function phaseOf({ earliest_at, latest_at }, now_ms) {
  if (now_ms < Date.parse(earliest_at)) return 'early';
  return now_ms <= Date.parse(latest_at) ? 'now' : 'late';
}

/**
 * "Adjust from 15:30, in 4 h 12 min", "Adjust now, until 10:00 tomorrow", "Past the usual time, 10:00".
 * @param {Window} window
 * @param {number} now_ms
 */
export function windowWords(window, now_ms) {
  switch (phaseOf(window, now_ms)) {
    case 'early':
      return `Adjust from ${clockWords(window.earliest_at, now_ms)}, in ${leftWords(window.earliest_at, now_ms)}`;
    case 'now':
      return `Adjust now, until ${clockWords(window.latest_at, now_ms)}, ${leftWords(window.latest_at, now_ms)} left`;
    default:
      return `Not adjusted; usual until ${clockWords(window.latest_at, now_ms)}`;
  }
}

/**
 * Time that is left, rounded up so that it never says less than there is: "4 h 12 min", "12 min".
 * @param {string} at
 * @param {number} now_ms
 */
export function leftWords(at, now_ms) {
  const minutes = Math.max(0, Math.ceil((Date.parse(at) - now_ms) / MINUTE_MS));
  const hours = Math.floor(minutes / 60);
  return hours > 0 ? `${hours} h ${minutes % 60} min` : `${minutes} min`;
}

/**
 * "15:30", "10:00 tomorrow", "25 Nov 2026, 10:00", in the time of this place.
 * @param {string} at
 * @param {number} now_ms
 */
export function clockWords(at, now_ms) {
  const day = today(new Date(Date.parse(at)));
  const clock = momentWords(at).slice(-5);
  if (day === today(new Date(now_ms))) return clock;
  const tomorrow = new Date(now_ms);
  tomorrow.setDate(tomorrow.getDate() + 1);
  return day === today(tomorrow) ? `${clock} tomorrow` : momentWords(at);
}
