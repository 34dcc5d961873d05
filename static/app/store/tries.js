/**
 * Tries of the unlock secret, counted before the secret is tried, so that neither closing the app nor trying in several tabs at once
 * gives one back.
 *
 * They are counted in the ledger's database. A phone without room cannot, and must open what it holds all the same: there they are
 * counted in the small storage beside it, which has room of its own, and whichever count is stricter holds. Where not even that
 * takes a count, no secret is tried.
 */
import { afterFailure, NO_ATTEMPTS, stillToWait } from './secret.js';

/** @typedef {import('./secret.js').Attempts} Attempts */

/** @param {import('./db.js').Database} db */
export function tries(db) {
  const aside = besides(db.name);
  const write = (/** @type {Attempts} */ attempts) =>
    db.run(['meta'], 'readwrite', tx => tx.objectStore('meta').put(attempts, 'attempts'), { strict: true });

  return {
    /**
     * @param {number} now_ms
     * @returns {Promise<number>}  milliseconds still to wait
     */
    async toWait(now_ms) {
      return stillToWait(stricter(await db.run(['meta'], 'readonly', tx => tx.objectStore('meta').get('attempts')), aside.read()), now_ms);
    },

    /**
     * Counts one more, where none has to be waited for.
     *
     * @param {number} now_ms
     * @returns {Promise<number>}  milliseconds still to wait: it is not counted, and must not be tried
     * @throws {import('../fault.js').Fault} storage_full where it can be counted nowhere
     */
    async count(now_ms) {
      let before = NO_ATTEMPTS;
      try {
        return await db.run(['meta'], 'readwrite', async tx => {
          const store = tx.objectStore('meta');
          before = stricter(await store.get('attempts'), aside.read());
          const left_ms = stillToWait(before, now_ms);
          if (!left_ms) await store.put(afterFailure(before, now_ms), 'attempts');
          return left_ms;
        }, { strict: true });
      } catch (/** @type {any} */ error) {
        if (error.code !== 'storage_full' || !aside.write(afterFailure(before, now_ms))) throw error;
        return 0;
      }
    },

    /** The secret was right. Without room the count in the database stays at what it was. */
    async forget() {
      aside.clear();
      await write(NO_ATTEMPTS).catch(error => {
        if (error.code !== 'storage_full') throw error;
      });
    },
  };
}

/** What is left beside a database that is removed. @param {string} name  of the database */
export function forgetTries(name) {
  besides(name).clear();
}

/** @param {string} name */
function besides(name) {
  const key = `tries/${name}`;
  return {
    /** @returns {Attempts} */
    read: () => JSON.parse(globalThis.localStorage?.getItem(key) ?? 'null') ?? NO_ATTEMPTS,
    /** @param {Attempts} attempts @returns {boolean}  whether it is kept */
    write(attempts) {
      try {
        globalThis.localStorage.setItem(key, JSON.stringify(attempts));
        return true;
      } catch {
        return false;
      }
    },
    clear: () => globalThis.localStorage?.removeItem(key),
  };
}

/**
 * @param {Attempts} [stored]
 * @param {Attempts} [aside]
 * @returns {Attempts}
 */
function stricter(stored = NO_ATTEMPTS, aside = NO_ATTEMPTS) {
  return { failed: Math.max(stored.failed, aside.failed), notBefore: Math.max(stored.notBefore, aside.notBefore) };
}
