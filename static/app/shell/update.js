/**
 * Installs the app on the phone, and puts a new release in only when a person says so.
 *
 *     startUpdates()              when the app opens
 *     updateState                 observable of {ready, offline}
 *     applyUpdate()               the person's word: keeps what is typed, then opens the new release
 *     beforeReload(keep)          `keep()` is awaited first; if it fails, the page stays as it is
 *
 * `ready`: a newer release waits. `offline`: whether the app would open and calculate without a network -
 * `unknown`, `fetching`, `ready`, `incomplete` (it will be tried again), `impossible` (the browser does not allow it).
 */
import { engineState } from '../engine/engine.js';
import { observable } from '../observable.js';
import { release } from './release.js';

const LOOK_AGAIN_MS = 60 * 60 * 1000;
/** The browser may end the service worker in the middle of a slow download; what it has is kept. */
const ANSWER_LIMIT_MS = 5 * 60 * 1000;
/** Right after a start the browser may hold a new release back for minutes, because of this page; opening it anew frees it. */
const TAKE_OVER_MS = 4000;
/** How often the page was opened anew for a release that was held back, in this tab. */
const TRIES = 'tries to take a release';
const MOST_TRIES = 3;

/** @typedef {{ready: boolean, offline: 'unknown' | 'fetching' | 'ready' | 'incomplete' | 'impossible'}} UpdateState */

/** @type {import('../observable.js').Observable<UpdateState>} */
export const updateState = observable(/** @type {UpdateState} */ ({ ready: false, offline: 'unknown' }));

/** @type {Set<() => Promise<unknown>>} */
const keepers = new Set();
/** @type {ServiceWorkerRegistration | undefined} */
let registration;
let applying = false;

export async function startUpdates() {
  const container = navigator.serviceWorker;
  if (!container) return tell({ offline: 'impossible' });
  let controlled = Boolean(container.controller);
  applying = triesSoFar() > 0;
  container.addEventListener('message', ({ data, ports }) => {
    if (data.ask === 'release') ports[0].postMessage({ release: release.name });
  });
  container.addEventListener('controllerchange', () => {
    if (applying) location.reload();
    // Another window took a new release: this one goes on with the old files until its person says so.
    else if (controlled) tell({ ready: true });
    controlled = true;
  });
  try {
    registration = await container.register('/sw.js', { scope: '/', updateViaCache: 'none' });
  } catch {
    return tell({ offline: 'incomplete' });
  }
  watch(registration);
  goOnTaking(registration);
  lookAgainWhenever(registration);
  whenEngineSettled(makeReadyForOffline);
}

/** @param {() => Promise<unknown>} keep */
export function beforeReload(keep) {
  keepers.add(keep);
  return () => void keepers.delete(keep);
}

export async function applyUpdate() {
  await Promise.all([...keepers].map((keep) => keep()));
  applying = true;
  if (!registration?.waiting) return location.reload();
  registration.waiting.postMessage({ ask: 'take over' });
  setTimeout(() => {
    sessionStorage.setItem(TRIES, String(triesSoFar() + 1));
    location.reload();
  }, TAKE_OVER_MS);
}

/** @param {ServiceWorkerRegistration} found */
async function goOnTaking(found) {
  if (found.waiting && applying && triesSoFar() < MOST_TRIES) return applyUpdate();
  const taking = applying;
  applying = false;
  sessionStorage.removeItem(TRIES);
  // It may have come in while this page was opened from the old one.
  if (found.active && isAnother(await question(found.active, 'state'))) {
    if (taking) location.reload();
    else tell({ ready: true });
  }
  return undefined;
}

/** @param {State} state */
function isAnother({ release: name }) {
  return name !== undefined && name !== release.name;
}

function triesSoFar() {
  return Number(sessionStorage.getItem(TRIES));
}

/** @param {ServiceWorkerRegistration} found */
function watch(found) {
  if (found.waiting && navigator.serviceWorker.controller) tell({ ready: true });
  found.addEventListener('updatefound', () => {
    const coming = found.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && navigator.serviceWorker.controller) tell({ ready: true });
    });
  });
}

/** @param {ServiceWorkerRegistration} found */
function lookAgainWhenever(found) {
  const look = () => {
    found.update().catch(() => {});
    if (updateState.get().offline === 'incomplete') makeReadyForOffline();
  };
  addEventListener('online', look);
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && look());
  setInterval(look, LOOK_AGAIN_MS);
}

/** The engine's own start fetches the same files; waiting for it keeps them from being fetched twice. */
function whenEngineSettled(/** @type {() => void} */ act) {
  if (engineState.get().phase !== 'starting') return act();
  const stop = engineState.subscribe(({ phase }) => {
    if (phase === 'starting') return;
    stop();
    act();
  });
}

async function makeReadyForOffline() {
  const active = (await navigator.serviceWorker.ready).active;
  if (!active) return;
  if (!complete(await question(active, 'state'))) tell({ offline: 'fetching' });
  tell({ offline: complete(await question(active, 'keep')) ? 'ready' : 'incomplete' });
}

/** @typedef {{shell: boolean, engine: boolean, release?: string}} State  of the service worker; an early one did not name its release */

/** @param {State} state */
function complete({ shell, engine }) {
  return shell && engine;
}

/**
 * @param {ServiceWorker} target
 * @param {'state' | 'keep'} ask
 * @returns {Promise<State>}
 */
function question(target, ask) {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data);
    setTimeout(() => resolve({ shell: false, engine: false }), ANSWER_LIMIT_MS);
    target.postMessage({ ask }, [port2]);
  });
}

/** @param {Partial<UpdateState>} change */
function tell(change) {
  updateState.set({ ...updateState.get(), ...change });
}
