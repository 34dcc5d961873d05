/**
 * The phone's side of the way back for a forgotten secret (`clinic/api/recovery` is the other).
 *
 * `meta` keeps under `recovery` the spares (`vault.js`), and under `recoveryDue` the key of the newest one, sealed under the keys
 * that it opens, until the clinic has it. Until then an older spare stays too: whichever key the clinic has, there is a spare
 * for it, though an answer was lost. `recoveryAgain` says that a new pair is wanted: the old key was handed out, or the clinic
 * may have lost it.
 */
import { Fault } from '../fault.js';
import { NO_ATTEMPTS } from './secret.js';
import { makeSpare, openSpare, seal, unseal } from './vault.js';

/** @typedef {import('./vault.js').Keys} Keys */
/** @typedef {import('./vault.js').Spare} Spare */
/** @typedef {{key_id: string, key: string}} Half  what the clinic keeps */

/** An older spare is of use only until the clinic has answered for a newer one. */
const MOST_SPARES = 4;

/**
 * @param {import('./db.js').Database} db
 * @param {() => Keys} keys  throws when locked
 * @param {{rounds?: number}} [options]
 */
export function recovery(db, keys, { rounds } = {}) {
  const meta = (/** @type {string} */ key) => db.run(['meta'], 'readonly', tx => tx.objectStore('meta').get(key));

  return {
    /**
     * Makes a spare where there is none, or a new one is wanted; called with the secret that just opened.
     *
     * @param {string} secret
     * @param {Keys} open
     */
    async prepare(secret, open) {
      if ((await meta('recovery'))?.length && !(await meta('recoveryAgain'))) return;
      const { spare, key } = await makeSpare(await meta('lock'), secret);
      const due = { id: spare.id, ...(await seal(open, `recovery:${spare.id}`, key)) };
      await db.run(['meta'], 'readwrite', async tx => {
        const store = tx.objectStore('meta');
        await store.put([spare, ...((await store.get('recovery')) ?? [])].slice(0, MOST_SPARES), 'recovery');
        await store.put(due, 'recoveryDue');
        await store.delete('recoveryAgain');
      }, { strict: true });
    },

    /** @returns {Promise<Half | null>}  what the clinic has not got yet */
    async due() {
      const due = await meta('recoveryDue');
      return due ? { key_id: due.id, key: await unseal(keys(), `recovery:${due.id}`, due) } : null;
    },

    /** @param {string} id  of the key that the clinic has now */
    async delivered(id) {
      await db.run(['meta'], 'readwrite', async tx => {
        const store = tx.objectStore('meta');
        if ((await store.get('recoveryDue'))?.id !== id) return;
        const spares = /** @type {Spare[]} */ ((await store.get('recovery')) ?? []);
        await store.put(spares.filter(spare => spare.id === id), 'recovery');
        await store.delete('recoveryDue');
      }, { strict: true });
    },

    /** Whether the clinic can help when the secret is forgotten. */
    async canRecover() {
      const [spares, due] = await Promise.all([meta('recovery'), meta('recoveryDue')]);
      return (spares ?? []).some((/** @type {Spare} */ { id }) => id !== due?.id);
    },

    /**
     * A new secret in the place of the forgotten one. All stays sealed as it is; the key that was handed out is not used again.
     *
     * @param {Half} half  as the clinic handed it out
     * @param {string} next
     * @throws {Fault} recovery_differs
     */
    async renew({ key_id, key }, next) {
      const spares = /** @type {Spare[]} */ ((await meta('recovery')) ?? []);
      const spare = spares.find(({ id }) => id === key_id);
      if (!spare) throw new Fault('recovery_differs', 'What the clinic keeps for this phone does not open it.');
      const lock = await openSpare(spare, key, next, { rounds });
      await db.run(['meta'], 'readwrite', async tx => {
        const store = tx.objectStore('meta');
        await Promise.all([
          store.put(lock, 'lock'),
          store.put(NO_ATTEMPTS, 'attempts'),
          store.put(true, 'recoveryAgain'),
        ]);
      }, { strict: true });
    },
  };
}
