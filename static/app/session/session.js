/**
 * The door of the session: who is here, and whether their records are open.
 *
 *     session      observable of {phase, login, user, clinic, clinics, waitUntil, emptied}
 *       phase      'starting', 'signed-out', 'choose-clinic', 'no-secret', 'locked', 'open'
 *       login      'unknown', 'signed-in', 'expired': what the server thinks; it matters to sync alone
 *       clinics    to choose from, in phase 'choose-clinic'
 *       waitUntil  after wrong secrets, when the next try counts (ms of the device's clock); 0 when at once
 *       emptied    null, or after this phone was revoked {name, sent, lost}: whose records were removed, and what was lost in words
 *     becomeAnotherDevice()          so that a revoked phone can be used again
 *     signIn({username, password, code}), chooseClinic(id), setSecret(secret), unlock(secret), lock(), changeSecret(old, next)
 *     signOut({leaving})             refused with `unsent_work` (value: how many) unless `leaving` is that number; what was not
 *                                    sent stays on this phone, sealed, for the next time the same person signs in here
 *     startAfresh({password, code, losing})  for a forgotten secret: refused with `unsent_work` unless `losing` is the number lost
 *     recover({password, code, next})  for a forgotten secret, where `canRecover()`: a new one after a sign-in; nothing is lost
 *     autoLock_min, setAutoLock(minutes)
 *
 * Everything rejects with a `Fault`. A login that expires locks nothing and loses nothing. `server.js` speaks to the server,
 * `login.js` decides, `auto-lock.js` watches the clock.
 */
import { observable } from '../observable.js';
import { closeStore, device, eraseLedgersOf, ledger, openStore } from '../store/store.js';
import { AUTO_LOCK_DEFAULT_MIN, watchIdle } from './auto-lock.js';
import { makeSession } from './login.js';
import { marker } from './marker.js';
import { connect } from './server.js';

export { AUTO_LOCK_CHOICES_MIN } from './auto-lock.js';

/** @type {Set<(heard: import('./server.js').Heard) => void>} */
const listeners = new Set();

export const server = connect({ onHeard: heard => listeners.forEach(listener => listener(heard)) });

/** @param {(heard: import('./server.js').Heard) => void} listener */
export const onHeard = listener => void listeners.add(listener);

const here = makeSession({ device, server, store: { ledger, openStore, closeStore, eraseLedgersOf }, marker });

export const { session, signIn, chooseClinic, setSecret, unlock, lock, changeSecret, signOut, startAfresh } = here;
export const { canRecover, recover } = here;
export const { becomeAnotherDevice, empty, expire, confirm, sendBeforeLeaving } = here;

export const autoLock_min = observable(AUTO_LOCK_DEFAULT_MIN);

/** @param {number} minutes */
export async function setAutoLock(minutes) {
  await device.set('autoLock_min', minutes);
  autoLock_min.set(minutes);
}

/** Finds out who is here; called once when the app starts. Needs no network. */
export async function openSession() {
  autoLock_min.set((await device.get('autoLock_min')) ?? AUTO_LOCK_DEFAULT_MIN);
  watchIdle({
    limit_min: autoLock_min.get,
    onIdle: () => void (session.get().phase === 'open' && here.lockThisTab()),
  });
  await here.open();
}
