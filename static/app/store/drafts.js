/**
 * Named values beside the records: sealed, written at most 300 ms after a change and at once when the page is hidden. One shelf
 * holds `drafts`, what was typed and not yet saved; the other what is `kept` only because making it again takes long.
 *
 * Opened values are held in memory, so `get` answers at once. A row that could not be written is kept sealed, in memory and
 * in the stash of this tab, and is written with the next.
 */
import { stash } from './stash.js';
import { blindName, seal, unseal } from './vault.js';

/** @typedef {import('./vault.js').Keys} Keys */
/** @typedef {import('./stash.js').DraftRow} DraftRow */

const WRITE_MS = 300;

/**
 * @param {import('./db.js').Database} db
 * @param {'drafts' | 'kept'} shelf  the object store
 * @param {{onProblem?: (error: any) => void}} [options]
 */
export function draftBook(db, shelf, { onProblem = () => {} } = {}) {
  const rescued = stash(`${shelf} ${db.name}`);
  /** @type {Keys | null} */
  let keys = null;
  /** @type {Map<string, unknown>} */
  let values = new Map();
  /** Names that changed and are not sealed yet. @type {Set<string>} */
  const due = new Set();
  /** Sealed rows that are not written yet, by key. @type {Map<string, DraftRow>} */
  const unwritten = new Map(rescued.recall().map(row => [row.name, row]));
  /** @type {ReturnType<typeof setTimeout> | null} */
  let timer = null;
  /** @type {Promise<void>} */
  let writing = Promise.resolve();

  /** @returns {Promise<void>} after everything kept so far is stored; rejects when it could not be */
  function flush() {
    if (timer) clearTimeout(timer);
    timer = null;
    const next = writing.then(write);
    writing = next.catch(() => {});
    return next;
  }

  async function write() {
    if (keys) await sealDue(keys);
    const rows = [...unwritten.values()];
    if (!rows.length) return;
    try {
      await db.run([shelf], 'readwrite', tx => {
        const store = tx.objectStore(shelf);
        return Promise.all(rows.map(row => (row.gone ? store.delete(row.name) : store.put(row))));
      });
      unwritten.clear();
    } catch (error) {
      onProblem(error);
      throw error;
    } finally {
      rescued.keep([...unwritten.values()]);
    }
  }

  /** @param {Keys} open */
  async function sealDue(open) {
    const names = [...due];
    due.clear();
    for (const name of names) {
      const blind = await blindName(open, name);
      const row = values.has(name)
        ? { name: blind, ...(await seal(open, `${shelf}:${blind}`, { name, value: values.get(name) })) }
        : { name: blind, gone: /** @type {const} */ (true) };
      unwritten.set(blind, row);
    }
  }

  /**
   * @param {Keys} open
   * @param {any} row
   * @returns {Promise<{name: string, value: unknown} | null>}
   */
  function unsealed(open, row) {
    // The first version of the app sealed drafts under another name.
    return unseal(open, `${shelf}:${row.name}`, row).catch(() => unseal(open, `draft:${row.name}`, row)).catch(() => null);
  }

  /** @param {string} name */
  function note(name) {
    due.add(name);
    timer ??= setTimeout(() => flush().catch(() => {}), WRITE_MS);
  }

  return {
    /** @param {string} name */
    get: name => values.get(name),

    names: () => [...values.keys()],

    /**
     * @param {string} name
     * @param {unknown} value  any JSON value; not changed by the caller afterwards
     */
    keep(name, value) {
      values.set(name, value);
      note(name);
    },

    /** @param {string} name */
    drop(name) {
      values.delete(name);
      note(name);
    },

    flush,

    /**
     * Takes a draft out of memory for a save, whose transaction deletes the row `key`; if that fails, `keep` the value again.
     *
     * @param {string} name
     * @returns {Promise<{key: string, value: unknown}>}
     */
    async take(name) {
      const key = await blindName(/** @type {Keys} */ (keys), name);
      // A write under way could put the row back after the save has deleted it.
      let seen;
      do {
        seen = writing;
        await seen;
      } while (seen !== writing);
      const value = values.get(name);
      values.delete(name);
      due.delete(name);
      unwritten.delete(key);
      return { key, value };
    },

    /** @param {Keys} opened */
    async open(opened) {
      await flush().catch(() => {});
      const stored = await db.run([shelf], 'readonly', tx => tx.objectStore(shelf).getAll());
      const rows = new Map([...stored.map(row => /** @type {const} */ ([row.name, row])), ...unwritten]);
      keys = opened;
      values = new Map();
      for (const row of rows.values()) {
        const draft = row.gone ? null : await unsealed(opened, row);
        if (draft) values.set(draft.name, draft.value);
      }
    },

    /** Forgets what is in memory, after storing what is due. What cannot be stored stays, sealed. */
    async close() {
      await flush().catch(() => {});
      keys = null;
      values = new Map();
    },

    /** How many are stored; counted without opening any. */
    count: () => db.run([shelf], 'readonly', tx => tx.objectStore(shelf).count()),
  };
}
