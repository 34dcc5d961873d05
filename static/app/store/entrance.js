/** The ways into a ledger: by its secret, or by the spare for who forgot it (`keeper.js`, `recovery.js`). */
import { keeper } from './keeper.js';
import { recovery } from './recovery.js';
import { checkSecret } from './secret.js';

/** @typedef {import('./vault.js').Keys} Keys */

/**
 * @param {import('./db.js').Database} db
 * @param {object} ledger
 * @param {number} [ledger.rounds]  of the key derivation
 * @param {() => number} [ledger.now]
 * @param {() => Keys} ledger.keys  throws when locked
 * @param {(keys: Keys) => Promise<void>} ledger.enter
 * @param {(error: any) => void} [ledger.onProblem]
 */
export function entrance(db, { rounds, now, keys, enter, onProblem }) {
  const door = keeper(db, { rounds, now });
  const back = recovery(db, keys, { rounds });

  /**
   * @param {string} secret
   * @param {Keys} open
   */
  async function enterWith(secret, open) {
    await enter(open);
    // Nobody is kept out for want of a way back.
    await back.prepare(secret, open).catch(error => onProblem?.(error));
  }

  return {
    hasSecret: door.hasSecret,
    waitUntil: door.waitUntil,
    changeSecret: door.changeSecret,
    /** @param {string} secret */
    setSecret: async secret => enterWith(secret, await door.setSecret(secret)),
    /** @param {string} secret */
    unlock: async secret => enterWith(secret, await door.unlock(secret)),
    recoveryDue: back.due,
    recoveryDelivered: back.delivered,
    canRecover: back.canRecover,
    /**
     * @param {import('./recovery.js').Half} half
     * @param {string} next
     */
    async renew(half, next) {
      checkSecret(next);
      await back.renew(half, next);
      await enterWith(next, await door.unlock(next));
    },
  };
}
