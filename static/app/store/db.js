/**
 * One IndexedDB database and its connection.
 *
 *     const db = database('name', steps, {notify});
 *     await db.run(['records'], 'readwrite', tx => tx.objectStore('records').put(row), {strict: true});
 *
 * - `run` resolves after the transaction's completion event and at no earlier moment: resolved means stored.
 * - A dead connection (phones lose it in the background) is dropped, opened again and the work tried once more. The work
 *   must therefore be safe to repeat. Only if that fails too is `lost` notified: the page should be loaded again.
 * - A newer version of the app in another tab makes this one let go (`outdated`); an older one that does not let go is
 *   notified as `blocked`.
 * - A failed opening is never kept: the next call tries afresh.
 * - Errors are `Fault`s: storage_full, storage_timeout, storage_blocked, storage_lost, storage_failed, storage_closed, app_outdated.
 */
import { Fault } from '../fault.js';
import { deleteDB, openDB } from '../vendor/idb.js';

/** @typedef {import('idb').IDBPDatabase<any>} Handle */
/** @typedef {import('idb').IDBPTransaction<any, string[], 'readwrite'>} Transaction */
/**
 * What leads from version i to i + 1 stands at index i. A released step is never edited.
 * @typedef {(db: Handle, tx: import('idb').IDBPTransaction<any, string[], 'versionchange'>) => void} Step
 */
/** @typedef {'blocked' | 'outdated' | 'lost'} Notice */
/** @typedef {ReturnType<typeof database>} Database */

const OPEN_MS = 15_000;
const WORK_MS = 20_000;

/**
 * @param {string} name
 * @param {Step[]} steps
 * @param {{notify?: (notice: Notice) => void, open_ms?: number, work_ms?: number}} [options]
 */
export function database(name, steps, { notify = () => {}, open_ms = OPEN_MS, work_ms = WORK_MS } = {}) {
  /** @type {Handle | null} */
  let handle = null;
  /** @type {Promise<Handle> | null} */
  let opening = null;
  let outdated = false;
  let closed = false;

  /** @returns {Promise<Handle>} */
  function connect() {
    if (closed) return Promise.reject(new Fault('storage_closed', 'Sign in first.'));
    if (handle) return Promise.resolve(handle);
    if (outdated) return Promise.reject(outdatedFault());
    opening ??= open().finally(() => {
      opening = null;
    });
    return opening;
  }

  async function open() {
    let blocked = false;
    let late = false;
    const request = openDB(name, steps.length, {
      upgrade(db, from, _to, tx) {
        for (const step of steps.slice(from)) step(db, /** @type {any} */ (tx));
      },
      blocked() {
        blocked = true;
        notify('blocked');
      },
      blocking(_current, wanted, event) {
        // `wanted` is null when another tab removes the database, which needs no newer app.
        outdated = wanted !== null;
        /** @type {IDBDatabase} */ (event.target).close();
        handle = null;
        if (outdated) notify('outdated');
      },
      terminated() {
        handle = null;
      },
    });
    request.then(opened => late && opened.close()).catch(() => {});
    const opened = await within(open_ms, request, () => {
      late = true;
      return blocked
        ? new Fault('storage_blocked', 'Another tab with an older version of this app is open. Close it, then try again.')
        : new Fault('storage_timeout', "This phone's storage did not answer. Nothing was saved. Try again.");
    });
    handle = opened;
    return opened;
  }

  /**
   * @template T
   * @param {string[]} stores
   * @param {'readonly' | 'readwrite'} mode
   * @param {(tx: Transaction) => T | Promise<T>} work  awaits requests of this transaction only
   * @param {{strict?: boolean}} [options]  strict: written through to the disk before it counts as done
   * @returns {Promise<T>}
   */
  async function run(stores, mode, work, options = {}) {
    try {
      return await attempt(stores, mode, work, options);
    } catch (error) {
      if (!lostConnection(error)) throw asFault(error);
      disconnect();
    }
    try {
      return await attempt(stores, mode, work, options);
    } catch (error) {
      if (lostConnection(error)) {
        disconnect();
        notify('lost');
      }
      throw asFault(error);
    }
  }

  /**
   * @template T
   * @param {string[]} stores
   * @param {'readonly' | 'readwrite'} mode
   * @param {(tx: Transaction) => T | Promise<T>} work
   * @param {{strict?: boolean}} options
   */
  async function attempt(stores, mode, work, { strict = false }) {
    const durability = strict ? 'strict' : 'default';
    const tx = /** @type {any} */ ((await connect()).transaction(stores, mode, { durability }));
    const completed = tx.done.then(() => null, (/** @type {any} */ error) => error);
    const finished = (async () => {
      const result = await work(tx);
      await tx.done;
      return result;
    })();
    try {
      return await within(work_ms, finished, () =>
        new Fault('storage_timeout', "This phone's storage did not answer in time. Nothing was saved. Try again."));
    } catch (error) {
      stop(tx);
      if (error instanceof Fault) throw error;
      // A request's own error may be empty where the transaction's says that the storage is full.
      const cause = await completed;
      throw cause?.name === 'QuotaExceededError' ? cause : error;
    }
  }

  function disconnect() {
    handle?.close();
    handle = null;
  }

  return {
    name,
    run,
    /** For good: what is still under way cannot open it again. */
    close() {
      closed = true;
      disconnect();
    },
    /** Closes and removes the database with all that is in it. */
    async erase() {
      closed = true;
      disconnect();
      await deleteDB(name, { blocked: () => notify('blocked') });
    },
  };
}

/** @param {{abort(): void}} tx */
function stop(tx) {
  try {
    tx.abort();
  } catch {
    // It had already ended.
  }
}

/**
 * @template T
 * @param {number} limit_ms
 * @param {Promise<T>} promise
 * @param {() => Fault} tooLate
 * @returns {Promise<T>}
 */
function within(limit_ms, promise, tooLate) {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(tooLate()), limit_ms);
    promise.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}

/** @param {unknown} error */
function lostConnection(error) {
  return (
    error instanceof DOMException &&
    (['InvalidStateError', 'UnknownError'].includes(error.name) || /connection/i.test(error.message))
  );
}

/** @param {unknown} error */
function asFault(error) {
  if (!(error instanceof DOMException)) return error;
  if (error.name === 'QuotaExceededError') {
    return new Fault('storage_full', "This phone's storage is full. Nothing was saved. Free some space, then save again.");
  }
  if (error.name === 'VersionError') return outdatedFault();
  if (lostConnection(error)) {
    return new Fault('storage_lost', 'The connection to this phone\'s storage was lost. Load the app again.');
  }
  return new Fault('storage_failed', `This phone's storage refused: ${error.message || error.name}. Nothing was saved.`);
}

function outdatedFault() {
  return new Fault('app_outdated', 'A newer version of this app is open in another tab. Load this page again.');
}
