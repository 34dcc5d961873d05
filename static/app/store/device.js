/** Facts about this phone and who uses it: nothing of a patient. */
import { database } from './db.js';
import { DEVICE_STEPS } from './schema.js';

/**
 * @typedef {object} Facts
 * @property {{id: string, name: string} | null} device  made once, kept for good; made anew only after it was revoked
 * @property {Emptied | null} emptied  that this phone was revoked for a person, until somebody signs in again
 * @property {Account | null} account  whose ledger opens when the app starts
 * @property {boolean} signOutDue  a sign-out that the server has not heard of yet
 * @property {number} autoLock_min
 * @property {{asked: string, persisted: boolean}} protection  what the browser answered, and when
 */
/** @typedef {{username: string, full_name: string}} User */
/**
 * @typedef {object} Emptied
 * @property {string} username
 * @property {string} name
 * @property {boolean} sent  whether all that could be sent was sent first
 * @property {string} lost  what was not with the clinic, in words
 * @property {boolean} due  it is still to be done
 */
/** @typedef {{id: string, name: string, role: string}} Clinic */
/** @typedef {{user: User, clinic: Clinic}} Account */
/** @typedef {ReturnType<typeof openDevice>} Device */

/** @param {{name?: string, notify?: (notice: import('./db.js').Notice) => void}} [options] */
export function openDevice({ name = 'device', notify } = {}) {
  const db = database(name, DEVICE_STEPS, { notify });

  /**
   * @template {keyof Facts} K
   * @param {K} key
   * @returns {Promise<Facts[K] | undefined>}
   */
  const get = key => db.run(['facts'], 'readonly', tx => tx.objectStore('facts').get(key));

  return {
    get,

    /**
     * @template {keyof Facts} K
     * @param {K} key
     * @param {Facts[K]} value
     */
    async set(key, value) {
      await db.run(['facts'], 'readwrite', tx => tx.objectStore('facts').put(value, key), { strict: true });
    },

    /** @returns {Promise<{id: string, name: string}>} */
    identity() {
      return db.run(['facts'], 'readwrite', async tx => {
        const facts = tx.objectStore('facts');
        const kept = await facts.get('device');
        if (kept) return kept;
        const made = { id: crypto.randomUUID(), name: modelName() };
        await facts.put(made, 'device');
        return made;
      }, { strict: true });
    },

    close: db.close,
  };
}

/** What a coordinator sees in the list of devices, as far as the browser tells. */
function modelName() {
  const agent = globalThis.navigator?.userAgent ?? '';
  const system = ['iPhone', 'iPad', 'Android', 'Windows', 'Macintosh', 'Linux'].find(word => agent.includes(word));
  return system ?? 'Device';
}
