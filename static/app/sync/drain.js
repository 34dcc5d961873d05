/**
 * One round of sync: push, then pull, by one tab at a time. Where the last push says that the feed has nothing else, no pull follows.
 *
 * A round ends in one of these ways; none of them loses or blocks anything:
 *
 *     done        all that could be sent is sent, all that the clinic had is here
 *     fetched     all that the clinic had is here; it takes nothing from an app this old (426) or from this account (403)
 *     later       unreachable, busy or refused for now: try again after a while
 *     signed-out  the login has expired, or another person signed in on this browser
 *     closed      the account may not sync this clinic (403, 404): only a person can change that
 *     wipe        this device was revoked, and has sent its last or may send no more: its store for this person has to go
 *     elsewhere   another tab is at it
 *     stopped     the records were locked or closed meanwhile
 */
import { CLIENT, ServerFault, signedOut } from '../session/server.js';
import { farewell } from './farewell.js';
import { pull } from './pull.js';
import { push } from './push.js';

/** @typedef {import('../store/ledger.js').Ledger} Ledger */
/** @typedef {{code: string, text: string}} Problem */
/**
 * @typedef {object} Outcome
 * @property {'done' | 'fetched' | 'later' | 'signed-out' | 'closed' | 'wipe' | 'elsewhere' | 'stopped'} end
 * @property {Problem | null} problem
 * @property {number | null} retryAfter_s
 */
/** @typedef {Pick<LockManager, 'request'>} Locks */

/**
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @param {{locks?: Locks}} [options]
 * @returns {Promise<Outcome>}
 */
export async function drain(ledger, server, { locks = globalThis.navigator?.locks } = {}) {
  if (!locks) return round(ledger, server);
  return locks.request(`sync ${ledger.name}`, { ifAvailable: true }, lock =>
    lock ? round(ledger, server) : { end: /** @type {const} */ ('elsewhere'), problem: null, retryAfter_s: null });
}

/**
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @returns {Promise<Outcome>}
 */
async function round(ledger, server) {
  try {
    const hello = await checkWho(ledger, server);
    try {
      // The clinic can tell whether it was restored only to who has met its feed: who has not, meets it before sending.
      if (!(await ledger.place()).cursor) await pull(ledger, server);
      const pushed = hello.minimum_client > CLIENT ? { ...NOTHING_SENT, error: tooOld() } : await tryPush(ledger, server);
      if (pushed.wipe) return await leave(ledger, server);
      if (!pushed.caughtUp || (await hasMoreToFetch(ledger))) await pull(ledger, server);
      await ledger.heard(new Date().toISOString());
      return endOf(pushed);
    } catch (error) {
      if (error instanceof ServerFault && error.code === 'device_revoked') return await leave(ledger, server);
      throw error;
    }
  } catch (error) {
    return failed(error);
  }
}

/**
 * @param {{left: number, error: ServerFault | null}} pushed
 * @returns {Outcome}
 */
function endOf({ left, error }) {
  if (error?.code === 'device_unknown') return failed(error);
  if (error) return { end: 'fetched', problem: { code: error.code, text: error.text }, retryAfter_s: null };
  if (left) return later('refused_for_now', 'The clinic could not take all records yet. They are sent again shortly.');
  return { end: 'done', problem: null, retryAfter_s: null };
}

/**
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @returns {Promise<Outcome>}
 */
async function leave(ledger, server) {
  const left = await farewell(ledger, server);
  if (left) return later('device_revoked', 'This phone was revoked. What it holds is sent to the clinic first, then removed from here.');
  return { end: 'wipe', problem: { code: 'device_revoked', text: 'This phone was revoked. What it held was sent to the clinic.' }, retryAfter_s: null };
}

/**
 * Whose session the browser holds decides as whom records are sent.
 *
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 */
async function checkWho(ledger, server) {
  let hello = server.lastHello() ?? (await server.greet());
  // Another tab may have signed in since.
  if (hello.user?.username !== ledger.author) hello = await server.greet();
  if (hello.user?.username !== ledger.author) throw signedOut();
  return hello;
}

/** A feed that is fetched afresh, or has to be, is no matter of the cursor that a push moves. @param {Ledger} ledger */
async function hasMoreToFetch(ledger) {
  const { staging, recheck, complete } = await ledger.place();
  return Boolean(staging) || recheck || !complete;
}

/**
 * What the storage says to who saves would be wrong here, where all that was saved is kept: the step of the round was not stored.
 *
 * @type {Record<string, string>}
 */
const HERE = {
  storage_full: "This phone's storage is full: what comes from the clinic finds no room. What was saved here is kept. Free some space; it is tried again by itself.",
  storage_timeout: "This phone's storage did not answer in time. What was saved here is kept; sending and fetching are tried again by themselves.",
  storage_failed: "This phone's storage refused what comes from the clinic. What was saved here is kept; it is tried again by itself.",
};

const NOTHING_SENT = { sent: 0, left: 0, wipe: false, caughtUp: false };

/**
 * A push that is refused for its sender, or for this app's age, must not keep the clinic's news away.
 *
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 */
async function tryPush(ledger, server) {
  try {
    return { ...(await push(ledger, server)), error: null };
  } catch (error) {
    if (!(error instanceof ServerFault) || ![403, 426].includes(error.status) || error.code === 'device_closed') throw error;
    return { ...NOTHING_SENT, error };
  }
}

/**
 * @param {unknown} error
 * @returns {Outcome}
 */
function failed(error) {
  if (!(error instanceof ServerFault)) {
    const { code = 'sync_failed', text = 'Something went wrong on this phone.' } = /** @type {any} */ (error);
    if (code === 'locked' || code === 'storage_closed') return { end: 'stopped', problem: null, retryAfter_s: null };
    return later(code, HERE[code] ?? text);
  }
  const problem = { code: error.code, text: error.text };
  if (error.code === 'device_closed') return { end: 'wipe', problem, retryAfter_s: null };
  // A device that the clinic does not know (a restored backup) becomes known by signing in on it.
  if (error.status === 401 || error.code === 'device_unknown') return { end: 'signed-out', problem, retryAfter_s: null };
  if ([403, 404, 426].includes(error.status)) return { end: 'closed', problem, retryAfter_s: null };
  return { end: 'later', problem, retryAfter_s: error.retryAfter_s };
}

/**
 * @param {string} code
 * @param {string} text
 * @returns {Outcome}
 */
function later(code, text) {
  return { end: 'later', problem: { code, text }, retryAfter_s: null };
}

function tooOld() {
  return new ServerFault(426, {
    code: 'client_too_old',
    text: 'This version of the app is too old to send. What the clinic has still comes, and all of it stays readable here; update the app, and what waits is sent.',
  });
}
