/** The session's moves, over a device, a server and a store; `session.js` has the real ones. */
import { Fault } from '../fault.js';
import { observable } from '../observable.js';
import { noteStorage } from '../store/protection.js';
import { forgotten } from './forgotten.js';
import { inWords, total } from './unsent.js';

/** @typedef {import('../store/device.js').User} User */
/** @typedef {import('../store/device.js').Clinic} Clinic */
/** @typedef {import('../store/ledger.js').Ledger} Ledger */
/**
 * @typedef {object} Session
 * @property {'starting' | 'signed-out' | 'choose-clinic' | 'no-secret' | 'locked' | 'open'} phase
 * @property {'unknown' | 'signed-in' | 'expired'} login
 * @property {User | null} user
 * @property {Clinic | null} clinic
 * @property {Clinic[]} clinics
 * @property {number} waitUntil
 * @property {Emptied | null} emptied  after this phone was revoked: what became of what was here
 */
/** @typedef {import('../store/device.js').Emptied} Emptied */
/**
 * @typedef {object} StoreDoor
 * @property {import('../observable.js').Observable<Ledger | null>} ledger
 * @property {(who: {author: string, clinic: string, device: string}) => Promise<Ledger>} openStore
 * @property {() => void} closeStore
 * @property {(author: string) => Promise<unknown>} eraseLedgersOf  in whichever clinic
 */

/** @type {Session} */
const NOBODY = { phase: 'signed-out', login: 'unknown', user: null, clinic: null, clinics: [], waitUntil: 0, emptied: null };

/**
 * @param {object} parts
 * @param {import('../store/device.js').Device} parts.device
 * @param {import('./server.js').Server} parts.server
 * @param {StoreDoor} parts.store
 * @param {import('./marker.js').Marker} [parts.marker]
 * @param {BroadcastChannel} [parts.tabs]  to the other tabs of this app
 */
export function makeSession({ device, server, store, marker, tabs = new BroadcastChannel('session') }) {
  /** @type {import('../observable.js').Observable<Session>} */
  const session = observable(/** @type {Session} */ ({ ...NOBODY, phase: 'starting' }));
  /** @type {() => Promise<unknown>} */
  let send = async () => {};

  const change = (/** @type {Partial<Session>} */ part) => session.set({ ...session.get(), ...part });

  function opened() {
    const ledger = store.ledger.get();
    if (!ledger) throw new Fault('signed_out', 'Sign in first.');
    return ledger;
  }

  async function open() {
    const isNew = !(await device.get('device'));
    const emptied = (await device.get('emptied')) ?? null;
    // The app may have been closed in the middle of it.
    if (emptied?.due) await finishEmptying(emptied);
    const account = await device.get('account');
    if (account) return show(account.user, account.clinic);
    session.set({ ...NOBODY, emptied: emptied && { ...emptied, due: false } });
    // A browser that the server knows, or that bears our mark, on a phone that knows nothing: the storage was cleared.
    if (isNew && marker?.get()) noteStorage({ cleared: true });
    const hello = await server.greet().catch(() => null);
    if (hello?.user && (await device.get('signOutDue'))) await finishSignOut();
    else if (hello?.user && isNew) noteStorage({ cleared: true });
  }

  /**
   * @param {User} user
   * @param {Clinic} clinic
   */
  async function enter(user, clinic) {
    await device.set('account', { user, clinic });
    await show(user, clinic);
  }

  /**
   * Writes nothing that is here already: a phone without room shows who it belongs to.
   *
   * @param {User} user
   * @param {Clinic} clinic
   */
  async function show(user, clinic) {
    const { id } = await device.identity();
    const ledger = await store.openStore({ author: user.username, clinic: clinic.id, device: id });
    marker?.set();
    const phase = (await ledger.hasSecret()) ? 'locked' : 'no-secret';
    change({ phase, user, clinic, clinics: [], waitUntil: await ledger.waitUntil() });
  }

  /**
   * @param {{username: string, password: string, code?: string}} who  `code` of the authenticator app, once the answer was
   *   `second_factor_required`
   */
  async function signIn(who) {
    const hello = await proveWho(who);
    await device.set('signOutDue', false);
    await device.set('emptied', null);
    const user = /** @type {User} */ (hello.user);
    const { user: before, clinic: beforeAt } = session.get();
    const stillIn = before?.username === user.username && hello.clinics.find(({ id }) => id === beforeAt?.id);
    if (stillIn) {
      await device.set('account', { user, clinic: stillIn });
      return change({ login: 'signed-in', user, clinic: stillIn });
    }
    await leave();
    const [only, ...others] = hello.clinics;
    if (!only) throw new Fault('no_clinic', 'This account belongs to no clinic. Ask the coordinator.');
    session.set({ ...NOBODY, phase: 'choose-clinic', login: 'signed-in', user, clinics: hello.clinics });
    if (!others.length) await enter(user, only);
  }

  /**
   * @param {{username: string, password: string, code?: string}} who
   */
  async function proveWho(who) {
    try {
      return await server.signIn({ ...who, device: await device.identity() });
    } catch (/** @type {any} */ error) {
      if (error.code === 'device_closed') await empty(who.username, { sent: false });
      throw error;
    }
  }

  /**
   * This phone was revoked for this person: what they have here goes, in every clinic, and the phone says so until somebody signs in.
   *
   * @param {string} username
   * @param {{sent: boolean}} how  whether all that could be sent was sent first
   */
  async function empty(username, { sent }) {
    const { user } = session.get();
    const ledger = user?.username === username ? store.ledger.get() : null;
    const lost = (await ledger?.unsent().catch(() => null)) ?? { records: 0, drafts: 0 };
    const emptied = { username, name: (user?.username === username && user.full_name) || username, sent, lost: total(lost) ? inWords(lost) : '', due: true };
    await device.set('emptied', emptied);
    await finishEmptying(emptied);
    session.set({ ...(ledger ? NOBODY : session.get()), emptied: { ...emptied, due: false } });
    await finishSignOut();
  }

  /** @param {Emptied} emptied */
  async function finishEmptying(emptied) {
    const account = await device.get('account');
    if (account?.user.username === emptied.username) {
      const who = { author: emptied.username, clinic: account.clinic.id, device: '' };
      const ledger = store.ledger.get() ?? (await store.openStore(who));
      await device.set('signOutDue', true);
      await leave();
      tabs.postMessage('signed-out');
      await ledger.erase();
      await device.set('account', null);
    }
    await store.eraseLedgersOf(emptied.username);
    await device.set('emptied', { ...emptied, due: false });
  }

  /** For a person who is to go on with a phone that was revoked: to the clinic it is another one from now on. */
  async function becomeAnotherDevice() {
    await device.set('device', null);
    await device.identity();
    await device.set('emptied', null);
    change({ emptied: null });
  }

  /** @param {string} id */
  async function chooseClinic(id) {
    const { user, clinics } = session.get();
    const clinic = clinics.find(each => each.id === id);
    if (!user || !clinic) throw new Fault('clinic_unknown', 'This is none of your clinics.', { field: 'clinic', value: id });
    await enter(user, clinic);
  }

  /** Closes what is open, without removing anything. */
  async function leave() {
    await store.ledger.get()?.lock();
    store.closeStore();
    session.set(NOBODY);
  }

  /** @param {string} secret */
  async function setSecret(secret) {
    await opened().setSecret(secret);
    change({ phase: 'open', waitUntil: 0 });
  }

  /** @param {string} secret */
  async function unlock(secret) {
    const ledger = opened();
    try {
      await ledger.unlock(secret);
    } catch (error) {
      change({ waitUntil: await ledger.waitUntil() });
      throw error;
    }
    change({ phase: 'open', waitUntil: 0 });
  }

  async function lockThisTab() {
    if (session.get().phase !== 'open') return;
    // The phase first: from here on no screen shows a patient.
    change({ phase: 'locked' });
    await opened().lock();
  }

  async function lock() {
    tabs.postMessage('lock');
    await lockThisTab();
  }

  /** @param {{leaving?: number}} [confirmed] */
  async function signOut({ leaving = 0 } = {}) {
    const ledger = store.ledger.get();
    if (ledger?.isOpen() && total(await ledger.unsent())) await send().catch(() => {});
    const unsent = ledger ? await ledger.unsent() : { records: 0, drafts: 0 };
    if (total(unsent) !== leaving) {
      throw new Fault('unsent_work', `Not yet with the clinic: ${inWords(unsent)}. They stay on this phone, sealed, and are sent when you sign in here again.`, {
        field: 'leaving',
        value: total(unsent),
        allowed: unsent,
      });
    }
    await device.set('signOutDue', true);
    await device.set('account', null);
    await leave();
    tabs.postMessage('signed-out');
    // With nothing unsent the clinic has it all, and a phone that nobody uses should hold nothing.
    if (!leaving) await ledger?.erase();
    await finishSignOut();
  }

  async function finishSignOut() {
    try {
      await server.signOut();
      await device.set('signOutDue', false);
    } catch {
      // Offline: the server hears of it when the app is next opened with a network.
    }
  }

  tabs.onmessage = ({ data }) => {
    if (data === 'lock') lockThisTab();
    if (data === 'signed-out' && session.get().phase !== 'signed-out') leave();
  };

  return {
    session, open, signIn, chooseClinic, empty, becomeAnotherDevice, setSecret, unlock, lock, lockThisTab, signOut,
    ...forgotten({ session, change, opened, proveWho, leave, enter, server, ledger: store.ledger }),

    /** @type {(secret: string, next: string) => Promise<void>} */
    changeSecret: (secret, next) => opened().changeSecret(secret, next),

    /** The server no longer knows us: sync waits for a new log-in, nothing else changes. */
    expire: () => change({ login: 'expired' }),

    /** The server knows us; it may have changed our role, or the clinic's name, since we signed in. */
    async confirm() {
      const { login, user, clinic } = session.get();
      if (login !== 'signed-in') change({ login: 'signed-in' });
      const told = server.lastHello()?.clinics.find(({ id }) => id === clinic?.id);
      if (!user || !clinic || !told || (told.name === clinic.name && told.role === clinic.role)) return;
      await device.set('account', { user, clinic: told });
      change({ clinic: told });
    },

    /** @param {() => Promise<unknown>} sender  tries to send what is waiting */
    sendBeforeLeaving(sender) {
      send = sender;
    },
  };
}
