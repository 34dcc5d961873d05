/**
 * @param {number} seconds
 * @returns {string} `45 seconds`, `3 minutes`; rounded up, so that nobody tries too early
 */
export function waitWords(seconds) {
  if (seconds >= 90) return `${Math.ceil(seconds / 60)} minutes`;
  return seconds === 1 ? '1 second' : `${seconds} seconds`;
}
