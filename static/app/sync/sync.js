/**
 * The door of sync: sends and fetches by itself, and tells the truth about it. It never holds up the app.
 *
 *     syncState     observable of
 *       waiting, attention   how many records are not with the clinic yet / need a person
 *       oldestWaitingAt      ISO time of the oldest waiting one's save, or null
 *       lastHeard            ISO time of the last complete round, or null
 *       complete             whether the first fetch has reached its end on this phone
 *       busy                 a round is under way
 *       error                null or {code, text}; being offline is `unreachable`, an expired login `not_authenticated`,
 *                            a too old app `client_too_old`
 *       clockOff_s           null, or by how many seconds this device's clock is ahead (behind: negative), beyond two minutes
 *     startSync()   begins; called once
 *     syncNow()     a round at once; resolves when it has ended, never rejects
 *
 * A round starts after a save, on opening, on return to the foreground, when the network comes back, and by a timer. `drain.js`
 * is the round, `push.js` and `pull.js` its halves, `pace.js` the waiting times.
 */
import { observable } from '../observable.js';
import { shareKeys } from '../session/device-keys.js';
import { confirm, empty, expire, onHeard, sendBeforeLeaving, server, session } from '../session/session.js';
import { noteStorage, storageState } from '../store/protection.js';
import { ledger, outbox } from '../store/store.js';
import { drain } from './drain.js';
import { clockOff_s, waitAfterFailure, waitAfterSuccess } from './pace.js';

/**
 * @typedef {object} SyncState
 * @property {number} waiting
 * @property {number} attention
 * @property {string | null} oldestWaitingAt
 * @property {string | null} lastHeard
 * @property {boolean} complete
 * @property {boolean} busy
 * @property {{code: string, text: string} | null} error
 * @property {number | null} clockOff_s
 */

/** After a save: long enough to send the records of one tap together. */
const SOON_MS = 300;
/** Another tab is at it: look again, should it be closed meanwhile. */
const ELSEWHERE_MS = 5_000;

const NOWHERE = { lastHeard: null, complete: false };

/** @type {import('../observable.js').Observable<SyncState>} */
export const syncState = observable(/** @type {SyncState} */ ({
  waiting: 0, attention: 0, oldestWaitingAt: null, lastHeard: null, complete: false, busy: false, error: null, clockOff_s: null,
}));

const note = (/** @type {Partial<SyncState>} */ part) => syncState.set({ ...syncState.get(), ...part });

/** @type {ReturnType<typeof setTimeout> | undefined} */
let timer;
let failures = 0;
/** @type {Promise<void> | null} */
let running = null;
let again = false;
let mightTry = false;
/** What the storage refused a round. @type {import('../store/protection.js').Problem | null} */
let complaint = null;

export function startSync() {
  onHeard(heard => note({ clockOff_s: clockOff_s(heard) }));
  sendBeforeLeaving(syncNow);
  outbox.subscribe(count);
  ledger.subscribe(tell);
  session.subscribe(onSession);
  addEventListener('online', wake);
  addEventListener('focus', wake);
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && wake());
  count(outbox.get());
  tell();
  onSession();
}

/** @returns {Promise<void>} */
export function syncNow() {
  clearTimeout(timer);
  if (running) {
    // What was saved since this round read the outbox is sent by the next.
    again = true;
    return running;
  }
  running = rounds().finally(() => {
    running = null;
    note({ busy: false });
  });
  return running;
}

async function rounds() {
  do {
    again = false;
    await oneRound();
  } while (again);
}

async function oneRound() {
  const open = ledger.get();
  if (!open?.isOpen()) return;
  note({ busy: true });
  const outcome = await drain(open, server);
  if (outcome.end === 'stopped') return undefined;
  if (outcome.end === 'elsewhere') return plan(ELSEWHERE_MS);
  note({ error: outcome.problem });
  if (outcome.problem?.code.startsWith('storage_')) complain(outcome.problem);
  await tell();
  switch (outcome.end) {
    case 'done':
    case 'fetched':
      failures = 0;
      complain(null);
      await confirm();
      await shareKeys(open, server).catch(() => {});
      return plan(waitAfterSuccess());
    case 'later':
      failures += 1;
      return plan(waitAfterFailure(failures, { retryAfter_s: outcome.retryAfter_s }));
    case 'signed-out':
      return expire();
    case 'wipe':
      note({ error: null });
      return empty(open.author, { sent: outcome.problem?.code === 'device_revoked' });
    default:
      return undefined;
  }
}

/**
 * What was said of an earlier round is taken back; what a save was told stays until the next save.
 *
 * @param {import('../store/protection.js').Problem | null} problem
 */
function complain(problem) {
  if (problem || (complaint && storageState.get().problem === complaint)) noteStorage({ problem });
  complaint = problem;
}

/** @param {number} wait_ms */
function plan(wait_ms) {
  clearTimeout(timer);
  timer = setTimeout(syncNow, wait_ms);
}

/** Somebody may have signed in again in another tab, so this tries with an expired login too. */
function wake() {
  failures = 0;
  if (session.get().phase === 'open') plan(0);
}

/** With an expired login a round can only fail; with an unknown one it finds out. */
function mayTry() {
  const { phase, login } = session.get();
  return phase === 'open' && login !== 'expired';
}

function onSession() {
  const may = mayTry();
  if (may && !mightTry) wake();
  if (!may) clearTimeout(timer);
  mightTry = may;
}

/** @param {readonly import('../store/outbox.js').Entry[]} entries */
function count(entries) {
  const waiting = entries.filter(entry => entry.state === 'waiting');
  const grown = waiting.length > syncState.get().waiting;
  note({ waiting: waiting.length, attention: entries.length - waiting.length, oldestWaitingAt: waiting[0]?.since ?? null });
  if (grown && mayTry()) {
    if (running) again = true;
    else plan(SOON_MS);
  }
}

/** Where this phone stands, as stored: another tab may have moved it. */
async function tell() {
  const open = ledger.get();
  const place = open ? await open.place().catch(() => null) : NOWHERE;
  if (place && ledger.get() === open) note({ lastHeard: place.lastHeard, complete: place.complete });
}
