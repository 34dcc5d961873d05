/** What a person can do who forgot the secret of this phone: choose a new one by a sign-in, or empty the phone. */
import { Fault } from '../fault.js';
import { checkSecret } from '../store/secret.js';
import { fetchHalf } from './device-keys.js';
import { inWords, total } from './unsent.js';

/** @typedef {import('./login.js').Session} Session */
/** @typedef {import('../store/ledger.js').Ledger} Ledger */

/** Who proved who they are has this long to confirm what it costs. */
const CONFIRM_MS = 2 * 60_000;

/**
 * @param {object} parts  the session's own
 * @param {import('../observable.js').Observable<Session>} parts.session
 * @param {import('../observable.js').Observable<Ledger | null>} parts.ledger
 * @param {(part: Partial<Session>) => void} parts.change
 * @param {() => Ledger} parts.opened
 * @param {(who: {username: string, password: string, code?: string}) => Promise<unknown>} parts.proveWho
 * @param {() => Promise<void>} parts.leave
 * @param {(user: import('../store/device.js').User, clinic: import('../store/device.js').Clinic) => Promise<void>} parts.enter
 * @param {import('./server.js').Server} parts.server
 */
export function forgotten({ session, ledger: current, change, opened, proveWho, leave, enter, server }) {
  let knownUntil = 0;

  /** @param {{password: string, code?: string, losing?: number}} confirmed */
  async function startAfresh({ losing = 0, ...who }) {
    const { user, clinic } = session.get();
    const ledger = opened();
    if (!user || !clinic) throw new Fault('signed_out', 'Sign in first.');
    // Once is enough for the question and its confirmation: the code of a second factor is good for one use.
    if (Date.now() > knownUntil) await proveWho({ username: user.username, ...who });
    knownUntil = Date.now() + CONFIRM_MS;
    change({ login: 'signed-in' });
    const unsent = await ledger.unsent();
    if (total(unsent) !== losing) {
      throw new Fault('unsent_work', `Never sent, and lost for good without the old PIN or passphrase: ${inWords(unsent)}.`, {
        field: 'losing',
        value: total(unsent),
        allowed: unsent,
      });
    }
    knownUntil = 0;
    await leave();
    await ledger.erase();
    change({ login: 'signed-in' });
    await enter(user, clinic);
  }

  /**
   * A new secret in place of a forgotten one, by a sign-in on this phone. Nothing that is here is lost, and nothing is changed
   * unless all of it succeeds.
   *
   * @param {{password: string, code?: string, next: string}} how
   */
  async function recover({ next, ...who }) {
    checkSecret(next);
    const { user } = session.get();
    const ledger = opened();
    if (!user) throw new Fault('signed_out', 'Sign in first.');
    await proveWho({ username: user.username, ...who });
    change({ login: 'signed-in' });
    await ledger.renew(await fetchHalf(ledger, server), next);
    change({ phase: 'open', waitUntil: 0 });
  }

  return {
    startAfresh,
    recover,
    /** Whether a forgotten secret can be replaced by a sign-in. */
    canRecover: async () => (await current.get()?.canRecover()) ?? false,
  };
}
