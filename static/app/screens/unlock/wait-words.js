import { sayCount } from '../../words/say.js';

/**
 * @param {number} seconds
 * @returns {string} `45 seconds`, `3 minutes`; rounded up, so that nobody tries too early
 */
export function waitWords(seconds) {
  if (seconds >= 90) return sayCount('{count} minute', '{count} minutes', Math.ceil(seconds / 60));
  return sayCount('{count} second', '{count} seconds', seconds);
}
