/** Who may open a ledger's database: sets, tries and changes the unlock secret, and makes a person wait after wrong ones (`tries.js`). */
import { Fault } from '../fault.js';
import { checkSecret } from './secret.js';
import { tries } from './tries.js';
import { makeVault, openVault, rewrap } from './vault.js';

/** @typedef {import('./vault.js').Keys} Keys */

/**
 * @param {import('./db.js').Database} db
 * @param {{now?: () => number, rounds?: number}} [options]
 */
export function keeper(db, { now = Date.now, rounds } = {}) {
  const counted = tries(db);
  const meta = (/** @type {string} */ key) => db.run(['meta'], 'readonly', tx => tx.objectStore('meta').get(key));
  const put = (/** @type {string} */ key, /** @type {unknown} */ value) =>
    db.run(['meta'], 'readwrite', tx => tx.objectStore('meta').put(value, key), { strict: true });

  /**
   * @template T
   * @param {() => Promise<T>} attempt
   * @returns {Promise<T>}
   * @throws {Fault} wrong_secret, too_many_tries
   */
  async function guarded(attempt) {
    const wait_ms = await counted.count(now());
    if (wait_ms > 0) {
      throw new Fault('too_many_tries', `Too many wrong tries. Try again in ${inWords(wait_ms)}.`, {
        field: 'secret',
        value: now() + wait_ms,
      });
    }
    const result = await attempt();
    await counted.forget();
    return result;
  }

  return {
    hasSecret: async () => Boolean(await meta('lock')),

    /** Milliseconds of the device's clock before which no try is accepted; 0 when one is. */
    async waitUntil() {
      const wait_ms = await counted.toWait(now());
      return wait_ms && now() + wait_ms;
    },

    /**
     * @param {string} secret
     * @returns {Promise<Keys>}
     * @throws {Fault} secret_too_short, secret_too_simple, secret_too_long, secret_exists
     */
    async setSecret(secret) {
      checkSecret(secret);
      const { lock, keys } = await makeVault(secret, { rounds });
      // Two tabs may both be asking: the first lock stays, or the second's records could never be opened with it.
      const isFirst = await db.run(['meta'], 'readwrite', async tx => {
        const store = tx.objectStore('meta');
        if (await store.get('lock')) return false;
        await store.put(lock, 'lock');
        return true;
      }, { strict: true });
      if (!isFirst) throw new Fault('secret_exists', 'This phone already has a PIN or passphrase for you. Unlock with it.');
      return keys;
    },

    /**
     * @param {string} secret
     * @returns {Promise<Keys>}
     * @throws {Fault} wrong_secret, too_many_tries
     */
    async unlock(secret) {
      const lock = await meta('lock');
      return guarded(() => openVault(lock, secret));
    },

    /**
     * @param {string} secret
     * @param {string} next
     * @throws {Fault} wrong_secret, too_many_tries, secret_too_short, secret_too_simple, secret_too_long
     */
    async changeSecret(secret, next) {
      checkSecret(next);
      const lock = await meta('lock');
      await put('lock', await guarded(() => rewrap(lock, secret, next)));
    },
  };
}

/** @param {number} wait_ms */
function inWords(wait_ms) {
  const seconds = Math.ceil(wait_ms / 1000);
  return seconds < 90 ? `${seconds} seconds` : `${Math.ceil(seconds / 60)} minutes`;
}
