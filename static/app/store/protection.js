/**
 * What the browser promises about keeping what is stored here.
 *
 * `storageState`: `asked` (ISO time, or null before the first save), `persisted`, `usage` and `quota` in bytes (null where the
 * browser does not say), `problem` (null or the last storage fault, `{code, text}`), `cleared` (the browser emptied the storage:
 * the clinic still knows this browser, the phone knows nothing).
 */
import { observable } from '../observable.js';

/** @typedef {{code: string, text: string}} Problem */
/**
 * @typedef {object} StorageState
 * @property {string | null} asked
 * @property {boolean} persisted
 * @property {number | null} usage
 * @property {number | null} quota
 * @property {Problem | null} problem
 * @property {boolean} cleared
 */

/** @type {import('../observable.js').Observable<StorageState>} */
export const storageState = observable(
  /** @type {StorageState} */ ({ asked: null, persisted: false, usage: null, quota: null, problem: null, cleared: false }),
);

/** @param {Partial<StorageState>} change */
export function noteStorage(change) {
  storageState.set({ ...storageState.get(), ...change });
}

/** @param {import('./device.js').Device} device */
export async function recallProtection(device) {
  const kept = await device.get('protection');
  if (kept) noteStorage(kept);
  const persisted = await navigator.storage?.persisted?.();
  if (persisted !== undefined) noteStorage({ persisted });
  if (kept && persisted === false && (await isGranted())) noteStorage({ persisted: await navigator.storage.persist() });
  await measureStorage();
}

/** Whether asking again would be a yes, and no question to the person: the app may have been installed since it was asked. */
async function isGranted() {
  const answer = await navigator.permissions?.query({ name: 'persistent-storage' }).catch(() => null);
  return answer?.state === 'granted';
}

/**
 * Asks the browser, once, to keep the data: after a first real save, when a person can see why.
 *
 * @param {import('./device.js').Device} device
 */
export async function askProtection(device) {
  if (storageState.get().asked) return;
  const asked = new Date().toISOString();
  noteStorage({ asked });
  const persisted = (await navigator.storage?.persist?.()) ?? false;
  noteStorage({ persisted });
  await device.set('protection', { asked, persisted });
  await measureStorage();
}

/** Below this nobody should begin a day's work: some hundreds of records with their plans. */
const LITTLE_BYTES = 20e6;
const LITTLE_SHARE = 0.05;

/**
 * @param {Pick<StorageState, 'usage' | 'quota'>} state
 * @returns {boolean}  whether the room that the browser allows is nearly used up
 */
export function isNearlyFull({ usage, quota }) {
  if (usage === null || !quota) return false;
  const left = quota - usage;
  return left < LITTLE_BYTES || left < quota * LITTLE_SHARE;
}

export async function measureStorage() {
  const estimate = await navigator.storage?.estimate?.();
  noteStorage({ usage: estimate?.usage ?? null, quota: estimate?.quota ?? null });
}
