/** What an unlock secret must be, and how long to wait after wrong ones. Pure. */
import { Fault } from '../fault.js';

/** @typedef {{failed: number, notBefore: number}} Attempts  `notBefore` in milliseconds of the device's clock */

const PIN_DIGITS = 6;
const PASSPHRASE_LETTERS = 10;
const LONGEST = 200;

/** Waits after the third, fourth, ... wrong secret in a row; the last one repeats. */
const WAITS_S = [5, 15, 60, 300, 900, 3600];
const FREE_TRIES = 2;

/** @type {Attempts} */
export const NO_ATTEMPTS = { failed: 0, notBefore: 0 };

/**
 * @param {string} secret
 * @throws {Fault} secret_too_short, secret_too_simple, secret_too_long
 */
export function checkSecret(secret) {
  const allowed = `a PIN of at least ${PIN_DIGITS} digits, or a passphrase of at least ${PASSPHRASE_LETTERS} characters`;
  const onlyDigits = /^\d*$/.test(secret);
  const field = 'secret';
  if (secret.length > LONGEST) throw new Fault('secret_too_long', `Use at most ${LONGEST} characters.`, { field, allowed });
  if (secret.length < (onlyDigits ? PIN_DIGITS : PASSPHRASE_LETTERS)) {
    throw new Fault('secret_too_short', `Use ${allowed}.`, { field, allowed });
  }
  if (onlyDigits && isRun(secret)) {
    throw new Fault('secret_too_simple', 'Digits all alike or in a row are guessed first. Choose others.', { field, allowed });
  }
}

/**
 * @param {Attempts} attempts
 * @param {number} now_ms
 * @returns {Attempts}  with one more wrong secret
 */
export function afterFailure({ failed }, now_ms) {
  const wait_s = failed < FREE_TRIES ? 0 : WAITS_S[Math.min(failed - FREE_TRIES, WAITS_S.length - 1)];
  return { failed: failed + 1, notBefore: now_ms + wait_s * 1000 };
}

/**
 * @param {Attempts} attempts
 * @param {number} now_ms
 * @returns {number}  milliseconds still to wait; never more than the longest wait, should the clock have been set back
 */
export function stillToWait({ notBefore }, now_ms) {
  return Math.max(0, Math.min(notBefore - now_ms, WAITS_S[WAITS_S.length - 1] * 1000));
}

/** @param {string} digits */
function isRun(digits) {
  const steps = new Set([...digits].slice(1).map((digit, index) => Number(digit) - Number(digits[index])));
  return steps.size === 1 && Math.abs([...steps][0]) <= 1;
}
