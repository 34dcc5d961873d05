/**
 * Sealing: AES-GCM with 256 bits, a fresh 96-bit nonce each time, and what the sealed thing is as additional data, so that a
 * ciphertext moved to another record's place does not open.
 *
 * The keys come from 32 random bytes made once (HKDF-SHA-256), which are stored only wrapped by a key made from the unlock
 * secret (PBKDF2-SHA-256, 600,000 rounds, own salt).
 *
 * Who copies the phone's storage can try secrets without our delays: a six-digit PIN falls to patient guessing, a long
 * passphrase does not.
 *
 * A forgotten secret is replaced by two halves that are of no use alone: a `Spare`, which stays here, is the same bytes wrapped
 * by 256 random bits, which the clinic keeps and hands out after a fresh sign-in on this phone (`recovery.js`).
 */
import { Fault } from '../fault.js';
import { hex, unhex } from './hex.js';

/** @typedef {{version: 1, salt: Uint8Array, rounds: number, iv: Uint8Array, wrapped: ArrayBuffer}} Lock */
/** @typedef {{id: string, iv: Uint8Array, wrapped: ArrayBuffer}} Spare */
/** @typedef {{records: CryptoKey, names: CryptoKey}} Keys */
/** @typedef {{iv: Uint8Array, sealed: ArrayBuffer}} Sealed */

const ROUNDS = 600_000;
const encoder = new TextEncoder();
const decoder = new TextDecoder();

/**
 * @param {string} secret
 * @param {{rounds?: number}} [options]
 * @returns {Promise<{lock: Lock, keys: Keys}>}
 */
export async function makeVault(secret, { rounds = ROUNDS } = {}) {
  const root = crypto.getRandomValues(new Uint8Array(32));
  const lock = await wrap(root, secret, rounds);
  const keys = await keysFrom(root);
  root.fill(0);
  return { lock, keys };
}

/**
 * @param {Lock} lock
 * @param {string} secret
 * @returns {Promise<Keys>}
 * @throws {Fault} wrong_secret
 */
export async function openVault(lock, secret) {
  return keysFrom(await unwrap(lock, secret));
}

/**
 * Another lock around the same keys.
 *
 * @param {Lock} lock
 * @param {string} secret  that opens it
 * @param {string} next  that opens the new one
 * @returns {Promise<Lock>}
 * @throws {Fault} wrong_secret
 */
export async function rewrap(lock, secret, next) {
  return wrap(await unwrap(lock, secret), next, lock.rounds);
}

/**
 * Another way to the same keys, for when the secret is forgotten.
 *
 * @param {Lock} lock
 * @param {string} secret  that opens it
 * @returns {Promise<{spare: Spare, key: string}>}  `key`, in hexadecimal, opens the spare: it does not stay beside it
 * @throws {Fault} wrong_secret
 */
export async function makeSpare(lock, secret) {
  const root = await unwrap(lock, secret);
  const id = hex(crypto.getRandomValues(new Uint8Array(16)));
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const key = crypto.getRandomValues(new Uint8Array(32));
  const wrapped = await crypto.subtle.encrypt(cipher(iv, `spare:${id}`), await spareKey(key), /** @type {BufferSource} */ (root));
  root.fill(0);
  return { spare: { id, iv, wrapped }, key: hex(key) };
}

/**
 * @param {Spare} spare
 * @param {string} key  in hexadecimal
 * @param {string} next  the new secret
 * @param {{rounds?: number}} [options]
 * @returns {Promise<Lock>}  around the same keys
 * @throws {Fault} recovery_differs
 */
export async function openSpare({ id, iv, wrapped }, key, next, { rounds = ROUNDS } = {}) {
  const opened = await crypto.subtle.decrypt(cipher(iv, `spare:${id}`), await spareKey(unhex(key)), wrapped).catch(() => null);
  if (!opened) throw new Fault('recovery_differs', 'What the clinic keeps for this phone does not open it.');
  return wrap(new Uint8Array(opened), next, rounds);
}

/**
 * @param {Keys} keys
 * @param {string} what  e.g. `record:ID`
 * @param {unknown} value  any JSON value
 * @returns {Promise<Sealed>}
 */
export async function seal(keys, what, value) {
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const plain = encoder.encode(JSON.stringify(value));
  const sealed = await crypto.subtle.encrypt(cipher(iv, what), keys.records, plain);
  return { iv, sealed };
}

/**
 * @param {Keys} keys
 * @param {string} what
 * @param {Sealed} sealed
 * @returns {Promise<any>}
 * @throws {Fault} seal_broken
 */
export async function unseal(keys, what, { iv, sealed }) {
  try {
    return JSON.parse(decoder.decode(await crypto.subtle.decrypt(cipher(iv, what), keys.records, sealed)));
  } catch {
    throw new Fault('seal_broken', 'Something stored on this phone was altered or damaged and cannot be read.', { value: what });
  }
}

/**
 * A name that says nothing to someone without the keys, and is the same each time.
 *
 * @param {Keys} keys
 * @param {string} name
 */
export async function blindName(keys, name) {
  return hex(await crypto.subtle.sign('HMAC', keys.names, encoder.encode(name)));
}

/**
 * @param {Uint8Array} root
 * @param {string} secret
 * @param {number} rounds
 * @returns {Promise<Lock>}
 */
async function wrap(root, secret, rounds) {
  const salt = crypto.getRandomValues(new Uint8Array(16));
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const key = await keyFromSecret(secret, salt, rounds);
  const wrapped = await crypto.subtle.encrypt(cipher(iv, 'root'), key, /** @type {BufferSource} */ (root));
  return { version: 1, salt, rounds, iv, wrapped };
}

/**
 * @param {Lock} lock
 * @param {string} secret
 */
async function unwrap(lock, secret) {
  const key = await keyFromSecret(secret, lock.salt, lock.rounds);
  try {
    return new Uint8Array(await crypto.subtle.decrypt(cipher(lock.iv, 'root'), key, lock.wrapped));
  } catch {
    throw new Fault('wrong_secret', 'This is not the PIN or passphrase of this phone.', { field: 'secret' });
  }
}

/**
 * @param {string} secret
 * @param {Uint8Array} salt
 * @param {number} rounds
 */
async function keyFromSecret(secret, salt, rounds) {
  // The same letters typed on two keyboards can differ in their bytes; NFKC makes them one.
  const typed = await crypto.subtle.importKey('raw', encoder.encode(secret.normalize('NFKC')), 'PBKDF2', false, ['deriveKey']);
  const how = { name: 'PBKDF2', hash: 'SHA-256', salt: /** @type {BufferSource} */ (salt), iterations: rounds };
  return crypto.subtle.deriveKey(how, typed, { name: 'AES-GCM', length: 256 }, false, ['encrypt', 'decrypt']);
}

/** @param {Uint8Array} key */
function spareKey(key) {
  return crypto.subtle.importKey('raw', /** @type {BufferSource} */ (key), 'AES-GCM', false, ['encrypt', 'decrypt']);
}

/**
 * @param {Uint8Array} root
 * @returns {Promise<Keys>}
 */
async function keysFrom(root) {
  const source = await crypto.subtle.importKey('raw', /** @type {BufferSource} */ (root), 'HKDF', false, ['deriveKey']);
  const from = (/** @type {string} */ info) =>
    ({ name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(), info: encoder.encode(info) });
  return {
    records: await crypto.subtle.deriveKey(from('records'), source, { name: 'AES-GCM', length: 256 }, false, ['encrypt', 'decrypt']),
    names: await crypto.subtle.deriveKey(from('names'), source, { name: 'HMAC', hash: 'SHA-256', length: 256 }, false, ['sign']),
  };
}

/**
 * @param {Uint8Array} iv
 * @param {string} what
 */
function cipher(iv, what) {
  return { name: 'AES-GCM', iv: /** @type {BufferSource} */ (iv), additionalData: encoder.encode(what) };
}
