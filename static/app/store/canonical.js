/**
 * Canonical JSON (RFC 8785) and its SHA-256: the same text and digest as `planner/canonical.py`, checked on
 * `fixtures/canonical.json`. A save makes its digest here, since it must not wait for the engine.
 */
import { hex } from './hex.js';

const LONE_SURROGATE = /\p{Surrogate}/u;

/**
 * @param {unknown} value  any JSON value
 * @returns {string}
 * @throws {TypeError} for what JSON cannot say: undefined, NaN, infinity, a lone surrogate, a function
 */
export function canonical(value) {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'string') return text(value);
  if (typeof value === 'number') return number(value);
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value === 'object') {
    const fields = /** @type {Record<string, unknown>} */ (value);
    // Sorting strings in JavaScript compares UTF-16 code units, as the RFC asks.
    return `{${Object.keys(fields).sort().map(key => `${text(key)}:${canonical(fields[key])}`).join(',')}}`;
  }
  throw new TypeError(`${typeof value} has no JSON form`);
}

/**
 * @param {unknown} value
 * @returns {Promise<string>}  64 lower-case hexadecimal digits
 */
export async function digest(value) {
  return sha256(canonical(value));
}

/**
 * @param {string} said
 * @returns {Promise<string>}  64 lower-case hexadecimal digits
 */
export async function sha256(said) {
  return hex(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(said)));
}

/** @param {number} value */
function number(value) {
  if (!Number.isFinite(value)) throw new TypeError('NaN and infinity have no canonical form');
  return JSON.stringify(value);
}

/** @param {string} value */
function text(value) {
  if (LONE_SURROGATE.test(value)) throw new TypeError('a lone surrogate has no canonical form');
  return JSON.stringify(value);
}
