/** Moments (ISO 8601 with offset) as a person near them would say: how long ago, and at what time. */
import { shortDateWords, today } from './date.js';
import { say, sayCount } from '../../words/say.js';

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;

/**
 * @param {string} at ISO 8601
 * @param {number} nowMs milliseconds since the epoch
 * @returns {string} `just now`, `5 min`, `3 h`, `2 days`; a clock that runs ahead by a little also reads `just now`
 */
export function durationWords(at, nowMs) {
  const passed = nowMs - Date.parse(at);
  if (passed < MINUTE_MS) return say('just now');
  if (passed < HOUR_MS) return say('{count} min', { count: Math.floor(passed / MINUTE_MS) });
  if (passed < 2 * DAY_MS) return say('{count} h', { count: Math.floor(passed / HOUR_MS) });
  return sayCount('{count} day', '{count} days', Math.floor(passed / DAY_MS));
}

/**
 * @param {string} at ISO 8601
 * @param {number} nowMs
 * @returns {string} `just now`, `5 min ago`
 */
export function agoWords(at, nowMs) {
  const duration = durationWords(at, nowMs);
  return nowMs - Date.parse(at) < MINUTE_MS ? duration : say('{duration} ago', { duration });
}

/** @returns {string} `25 Nov 2026, 09:30`, in the time of this place */
export function momentWords(at) {
  const moment = new Date(at);
  if (Number.isNaN(moment.getTime())) return String(at ?? '');
  const two = (number) => String(number).padStart(2, '0');
  return `${shortDateWords(today(moment))}, ${two(moment.getHours())}:${two(moment.getMinutes())}`;
}
