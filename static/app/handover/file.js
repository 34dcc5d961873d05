/**
 * The hand-over file, version 1: records on their way between devices without a server, sealed by a passphrase.
 *
 *     magic    8 bytes    `PPCARRY1`
 *     length   4 bytes    of the header, unsigned, big-endian; at most 2,000
 *     header   JSON in UTF-8: {"clinic": UUID, "made_at": ISO 8601 with offset, "salt": base64 of 16 random bytes,
 *                              "rounds": of the key derivation}
 *     pages    one or more, each: length (4 bytes, as above; at most 8 MiB) and so many bytes of AES-GCM with a 128-bit tag
 *
 * - The key is PBKDF2-HMAC-SHA-256 of the passphrase in its normal form (`normalPassphrase`), with the header's salt and rounds:
 *   256 bits. The salt is fresh for each file, so no key seals two files. A reader refuses fewer than 1,000,000 rounds, and more
 *   than 10,000,000.
 * - The nonce of page n (0, 1, 2, ...) is 12 bytes: seven of zero, n in four bytes, big-endian, and 1 for the last page, else 0.
 *   A page that is missing, repeated, moved or cut off at the end therefore does not open.
 * - Additional data of every page: all bytes from the magic to the end of the header. An altered header opens no page.
 * - A page's plaintext is JSON in UTF-8. The first is {"from": {"username", "full_name", "role", "device", "device_name"},
 *   "count": how many records}; each of the others {"items": [{"record": a record as in DEVELOPERS.md, with `position`,
 *   `received_at` and, where there is one, `receipt` if the clinic has it; "sent": whether the clinic has it, "refused": whether it
 *   refused it, "tag": the seal of the device that made it ("Carried records" in clinic/sync/protocol.py), "" where there is
 *   none; "maker": the full name of the account that made it, "" where it is not known}]}.
 *
 * Nothing of a patient is in clear, nor who made the file; the clinic's id and the time are. A reader takes all or nothing.
 */
import { Fault } from '../fault.js';

const MAGIC = new TextEncoder().encode('PPCARRY1');
export const ROUNDS = 1_000_000;
const MOST_ROUNDS = 10_000_000;
const MOST_HEADER = 2_000;
const MOST_PAGE = 8 * 1024 * 1024;
/** Of six words of the list or more; of fewer, a file that was lost could be opened by trying. */
const LEAST_LETTERS = 20;

/** @typedef {{clinic: string, made_at: string, salt: string, rounds: number}} Header */

/**
 * @param {object} what
 * @param {string} what.clinic
 * @param {string} what.made_at
 * @param {unknown[]} what.pages  any JSON values
 * @param {string} what.passphrase
 * @param {number} [what.rounds]
 * @returns {Promise<Uint8Array>}
 * @throws {Fault} passphrase_short
 */
export async function writeFile({ clinic, made_at, pages, passphrase, rounds = ROUNDS }) {
  if (normalPassphrase(passphrase).length < LEAST_LETTERS) {
    throw new Fault('passphrase_short', `Use at least ${LEAST_LETTERS} letters.`, { field: 'passphrase' });
  }
  const salt = crypto.getRandomValues(new Uint8Array(16));
  const header = new TextEncoder().encode(JSON.stringify({ clinic, made_at, salt: base64(salt), rounds }));
  const top = joined([MAGIC, number(header.length), header]);
  const key = await keyFrom(passphrase, salt, rounds);
  const parts = [top];
  for (const [index, page] of pages.entries()) {
    const plain = new TextEncoder().encode(JSON.stringify(page));
    const sealed = await crypto.subtle.encrypt(cipher(index, index === pages.length - 1, top), key, plain);
    parts.push(number(sealed.byteLength), new Uint8Array(sealed));
  }
  return joined(parts);
}

/**
 * @param {Uint8Array} bytes
 * @returns {Header}  not authenticated yet: good for a refusal, not for more
 * @throws {Fault} file_foreign, file_damaged
 */
export function readHeader(bytes) {
  return split(bytes).header;
}

/**
 * @param {Uint8Array} bytes
 * @param {string} passphrase
 * @param {{leastRounds?: number}} [options]
 * @returns {Promise<{header: Header, pages: any[]}>}
 * @throws {Fault} file_foreign, file_damaged, file_weak, wrong_passphrase
 */
export async function readFile(bytes, passphrase, { leastRounds = ROUNDS } = {}) {
  const { header, top, sealed } = split(bytes);
  if (header.rounds < leastRounds || header.rounds > MOST_ROUNDS) {
    throw new Fault('file_weak', 'This file is not sealed as it should be. Nothing was taken from it.');
  }
  const key = await keyFrom(passphrase, unbase64(header.salt), header.rounds);
  /** @type {any[]} */
  const pages = [];
  for (const [index, page] of sealed.entries()) {
    const plain = await crypto.subtle
      .decrypt(cipher(index, index === sealed.length - 1, top), key, /** @type {BufferSource} */ (page))
      .catch(() => null);
    // A wrong passphrase opens no page at all. A damaged first page looks the same: nobody can tell the two apart.
    if (!plain && index === 0) {
      throw new Fault('wrong_passphrase', 'These words do not open the file. Ask for them again; if they are right, the file is damaged.', {
        field: 'passphrase',
      });
    }
    if (!plain) throw damaged();
    pages.push(JSON.parse(new TextDecoder().decode(plain)));
  }
  return { header, pages };
}

/**
 * As it was told by mouth: capitals, spaces and hyphens make no difference.
 *
 * @param {string} said
 */
export function normalPassphrase(said) {
  return said.normalize('NFKC').toLowerCase().split(/[\s,.\-]+/).filter(Boolean).join(' ');
}

/**
 * @param {Uint8Array} bytes
 * @returns {{header: Header, top: Uint8Array, sealed: Uint8Array[]}}
 */
function split(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const isOurs = bytes.length > MAGIC.length + 4 && MAGIC.every((byte, index) => bytes[index] === byte);
  if (!isOurs) throw new Fault('file_foreign', 'This is not a hand-over file of this app.');
  const from = MAGIC.length + 4;
  const end = from + view.getUint32(MAGIC.length);
  if (end - from > MOST_HEADER || end > bytes.length) throw damaged();
  const header = headerOf(bytes.subarray(from, end));
  /** @type {Uint8Array[]} */
  const sealed = [];
  for (let place = end; place < bytes.length; ) {
    const length = place + 4 <= bytes.length ? view.getUint32(place) : MOST_PAGE + 1;
    if (length > MOST_PAGE || place + 4 + length > bytes.length) throw damaged();
    sealed.push(bytes.subarray(place + 4, place + 4 + length));
    place += 4 + length;
  }
  if (!sealed.length) throw damaged();
  return { header, top: bytes.subarray(0, end), sealed };
}

/**
 * @param {Uint8Array} bytes
 * @returns {Header}
 */
function headerOf(bytes) {
  try {
    const told = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    const isWhole = ['clinic', 'made_at', 'salt'].every(name => typeof told[name] === 'string') && Number.isInteger(told.rounds);
    if (isWhole && unbase64(told.salt).length === 16) return told;
  } catch {
    // Told below.
  }
  throw damaged();
}

function damaged() {
  return new Fault('file_damaged', 'This file is damaged or cut off. Nothing was taken from it; have it copied again.');
}

/**
 * @param {string} passphrase
 * @param {Uint8Array} salt
 * @param {number} rounds
 */
async function keyFrom(passphrase, salt, rounds) {
  const said = new TextEncoder().encode(normalPassphrase(passphrase));
  const typed = await crypto.subtle.importKey('raw', said, 'PBKDF2', false, ['deriveKey']);
  const how = { name: 'PBKDF2', hash: 'SHA-256', salt: /** @type {BufferSource} */ (salt), iterations: rounds };
  return crypto.subtle.deriveKey(how, typed, { name: 'AES-GCM', length: 256 }, false, ['encrypt', 'decrypt']);
}

/**
 * @param {number} index
 * @param {boolean} isLast
 * @param {Uint8Array} top
 */
function cipher(index, isLast, top) {
  const iv = joined([new Uint8Array(7), number(index), Uint8Array.of(isLast ? 1 : 0)]);
  return { name: 'AES-GCM', iv: /** @type {BufferSource} */ (iv), additionalData: /** @type {BufferSource} */ (top) };
}

/** @param {number} value */
function number(value) {
  const bytes = new Uint8Array(4);
  new DataView(bytes.buffer).setUint32(0, value);
  return bytes;
}

/** @param {Uint8Array[]} parts */
function joined(parts) {
  const whole = new Uint8Array(parts.reduce((length, part) => length + part.length, 0));
  let place = 0;
  for (const part of parts) {
    whole.set(part, place);
    place += part.length;
  }
  return whole;
}

/** @param {Uint8Array} bytes */
function base64(bytes) {
  return btoa(String.fromCharCode(...bytes));
}

/** @param {string} text */
function unbase64(text) {
  return Uint8Array.from(atob(text), letter => letter.charCodeAt(0));
}
