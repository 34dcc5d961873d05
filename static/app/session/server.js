/**
 * How the app speaks to the server: JSON with the session cookie, a CSRF token on writes, a time limit on each call.
 *
 *     await server.call('POST', `/api/v1/clinics/${id}/push`, {body})   resolves with the answer, rejects with ServerFault
 *
 * A write refused for its CSRF token (another tab signed in) is tried once more with a fresh one, unless somebody else is signed
 * in by now. `onHeard` is told the server's clock with each answer that carries it. Large bodies go compressed, unless something on
 * the way spoils that: then they go plain from there on.
 */
import { Fault } from '../fault.js';
import { language } from '../words/say.js';
import { packed } from './packing.js';

/** Number of the API's protocol that this app speaks; compared with the server's `minimum_client`. */
export const CLIENT = 1;

const CALL_MS = 60_000;
/** What the server says of a compressed body that it cannot read. */
const SPOILT = ['encoding_unknown', 'bad_encoding'];

/**
 * @typedef {object} Hello
 * @property {string} csrf_token
 * @property {string} server_time
 * @property {number} minimum_client
 * @property {{username: string, full_name: string} | null} user
 * @property {{id: string, name: string, role: string}[]} clinics
 */
/** @typedef {{serverTime: string, sentAt: number, receivedAt: number}} Heard  times in milliseconds of this device */
/** @typedef {ReturnType<typeof connect>} Server */

/** What the server answered, or that it did not (`status` 0, code `unreachable`). */
export class ServerFault extends Fault {
  /**
   * @param {number} status
   * @param {{code?: string, text?: string, field?: string, value?: unknown, allowed?: unknown}} error
   * @param {{retryAfter_s?: number | null}} [more]
   */
  constructor(status, { code = `http_${status}`, text = `The server answered ${status}.`, ...facts }, { retryAfter_s = null } = {}) {
    super(code, text, { ...facts, retryable: status === 0 || status === 408 || status === 429 || status >= 500 });
    this.name = 'ServerFault';
    this.status = status;
    this.retryAfter_s = retryAfter_s;
  }
}

/**
 * @param {object} [options]
 * @param {typeof globalThis.fetch} [options.fetch]
 * @param {(heard: Heard) => void} [options.onHeard]
 * @param {number} [options.limit_ms]
 */
export function connect({ fetch = (...args) => globalThis.fetch(...args), onHeard = () => {}, limit_ms = CALL_MS } = {}) {
  /** @type {Hello | null} */
  let hello = null;
  /** @type {Map<string, string[]>} */
  let cardKeys = new Map();

  /** Card keys go into the sealed store alone, so they are parted from what is kept in clear. @param {any} told @returns {Hello} */
  function greeted(told) {
    cardKeys = new Map(told.clinics.map((/** @type {any} */ clinic) => [clinic.id, clinic.card_keys ?? []]));
    const clinics = told.clinics.map((/** @type {any} */ { id, name, role }) => ({ id, name, role }));
    hello = { ...told, clinics };
    return /** @type {Hello} */ (hello);
  }
  let mayPack = true;

  /** Who the server takes this browser for, and a fresh CSRF token. */
  async function greet() {
    return greeted(await send('GET', '/api/v1/session'));
  }

  /**
   * @param {string} method
   * @param {string} path
   * @param {{body?: unknown}} [options]
   * @returns {Promise<any>}
   * @throws {ServerFault}
   */
  async function call(method, path, { body } = {}) {
    if (method === 'GET') return send(method, path);
    const before = hello ?? (await greet());
    try {
      return await send(method, path, body);
    } catch (error) {
      if (!(error instanceof ServerFault) || error.code !== 'csrf_failed') throw error;
    }
    const now = await greet();
    if (now.user?.username !== before.user?.username) throw signedOut();
    return send(method, path, body);
  }

  /**
   * @param {string} method
   * @param {string} path
   * @param {unknown} [body]
   */
  async function send(method, path, body) {
    /** @type {Record<string, string>} */
    const headers = { Accept: 'application/json', 'Accept-Language': language.get(), 'X-Client': String(CLIENT) };
    if (method !== 'GET') headers['X-CSRFToken'] = hello?.csrf_token ?? '';
    const text = body === undefined ? undefined : JSON.stringify(body);
    if (text !== undefined) headers['Content-Type'] = 'application/json';
    if (text === undefined || !mayPack) return deliver(method, path, headers, text);
    const { body: small, encoding } = await packed(text);
    if (!encoding) return deliver(method, path, headers, text);
    try {
      return await deliver(method, path, { ...headers, 'Content-Encoding': encoding }, small);
    } catch (error) {
      if (!(error instanceof ServerFault) || !SPOILT.includes(error.code)) throw error;
      mayPack = false;
      return deliver(method, path, headers, text);
    }
  }

  /**
   * @param {string} method
   * @param {string} path
   * @param {Record<string, string>} headers
   * @param {string | ArrayBuffer} [body]
   */
  async function deliver(method, path, headers, body) {
    const sentAt = Date.now();
    const { response, answer } = await reach(path, {
      method,
      headers,
      body,
      credentials: 'same-origin',
      cache: 'no-store',
      signal: AbortSignal.timeout(limit_ms),
    });
    if (!response.ok) {
      const wait = Number(response.headers.get('Retry-After'));
      throw new ServerFault(response.status, answer?.errors?.[0] ?? {}, { retryAfter_s: wait > 0 ? wait : null });
    }
    // A captive portal's page comes with 200, too.
    if (answer === null) throw unreachable();
    if (answer.server_time) onHeard({ serverTime: answer.server_time, sentAt, receivedAt: Date.now() });
    return answer;
  }

  /**
   * @param {string} path
   * @param {RequestInit} init
   * @returns {Promise<{response: Response, answer: any}>}  the answer is null where it is no JSON
   */
  async function reach(path, init) {
    let response;
    let text;
    try {
      response = await fetch(path, init);
      text = await response.text();
    } catch {
      throw unreachable();
    }
    try {
      return { response, answer: JSON.parse(text) };
    } catch {
      return { response, answer: null };
    }
  }

  return {
    call,
    greet,
    /** The last greeting; null before the first. */
    lastHello: () => hello,
    /** By clinic, of the last greeting. */
    lastCardKeys: () => cardKeys,

    /**
     * @param {{username: string, password: string, code?: string, device: {id: string, name: string}}} credentials
     * @returns {Promise<Hello>}
     */
    async signIn(credentials) {
      // The token of another session may be old: a stranger's write has nothing to lose by a fresh one.
      await greet();
      return greeted(await send('POST', '/api/v1/session', credentials));
    },

    async signOut() {
      await greet();
      greeted(await send('DELETE', '/api/v1/session'));
    },
  };
}

export function signedOut() {
  return new ServerFault(401, { code: 'not_authenticated', text: 'Sign in again, so that your work can be sent.' });
}

export function unreachable() {
  return new ServerFault(0, { code: 'unreachable', text: 'The clinic cannot be reached now.' });
}
