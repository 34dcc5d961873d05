/** When to try next, and how much at once. Pure. */

const FIRST_WAIT_MS = 2_000;
const LONGEST_WAIT_MS = 5 * 60_000;
const REST_MS = 60_000;

/** Little enough to get through on a poor link before a call's time is over. */
export const FIRST_BATCH = 100;
/** As many as the clinic takes at once. */
const LARGEST_BATCH = 500;
const QUICK_MS = 2_000;
const SLOW_MS = 10_000;

/** Beyond this a device's clock is worth a warning. */
export const CLOCK_LIMIT_S = 120;

/**
 * After a failure: twice as long each time, spread by half, so that a clinic's phones do not come back all at once.
 *
 * @param {number} failures  in a row, at least 1
 * @param {{random?: number, retryAfter_s?: number | null}} [options]  `random` in 0..1
 */
export function waitAfterFailure(failures, { random = Math.random(), retryAfter_s = null } = {}) {
  const longest = Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** (failures - 1));
  return Math.max((retryAfter_s ?? 0) * 1000, longest * (0.5 + random / 2));
}

/**
 * How many records to send next: more where the last went quickly, fewer where it was slow or refused as a whole.
 *
 * @param {number} most  that were to be sent at once
 * @param {{sent: number, took_ms: number, answered: boolean}} last
 */
export function nextBatchSize(most, { sent, took_ms, answered }) {
  if (!answered) return Math.ceil(sent / 2);
  if (took_ms < QUICK_MS) return Math.min(LARGEST_BATCH, most * 2);
  return took_ms > SLOW_MS ? Math.ceil(most / 2) : most;
}

/** @param {number} [random]  in 0..1 */
export function waitAfterSuccess(random = Math.random()) {
  return REST_MS * (0.8 + random * 0.4);
}

/**
 * How far the device's clock is ahead of the server's (behind: negative), taking the middle of the call as its moment.
 *
 * @param {import('../session/server.js').Heard} heard
 * @returns {number | null}  seconds, or null while it is within the limit
 */
export function clockOff_s({ serverTime, sentAt, receivedAt }) {
  const off_s = ((sentAt + receivedAt) / 2 - Date.parse(serverTime)) / 1000;
  return Math.abs(off_s) > CLOCK_LIMIT_S ? Math.round(off_s) : null;
}
