/**
 * What was typed and not yet saved: sealed, written at most 300 ms after a change and at once when the page is hidden.
 *
 * Opened drafts are held in memory, so `get` answers at once. A write that fails stays due and is tried again with the next.
 */
import { blindName, seal, unseal } from './vault.js';

/** @typedef {import('./vault.js').Keys} Keys */

const WRITE_MS = 300;

/**
 * @param {import('./db.js').Database} db
 * @param {{onProblem?: (error: any) => void}} [options]
 */
export function draftBook(db, { onProblem = () => {} } = {}) {
  /** @type {Keys | null} */
  let keys = null;
  /** @type {Map<string, unknown>} */
  let values = new Map();
  /** @type {Set<string>} */
  const due = new Set();
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
    const names = [...due];
    if (!names.length || !keys) return;
    due.clear();
    const open = keys;
    try {
      const rows = await Promise.all(names.map(async name => {
        const blind = await blindName(open, name);
        if (!values.has(name)) return { name: blind, gone: true };
        return { name: blind, ...(await seal(open, `draft:${blind}`, { name, value: values.get(name) })) };
      }));
      await db.run(['drafts'], 'readwrite', tx => {
        const store = tx.objectStore('drafts');
        return Promise.all(rows.map(row => ('gone' in row ? store.delete(row.name) : store.put(row))));
      });
    } catch (error) {
      names.forEach(name => due.add(name));
      onProblem(error);
      throw error;
    }
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
      return { key, value };
    },

    /** @param {Keys} opened */
    async open(opened) {
      const rows = await db.run(['drafts'], 'readonly', tx => tx.objectStore('drafts').getAll());
      const drafts = await Promise.all(rows.map(row => unseal(opened, `draft:${row.name}`, row).catch(() => null)));
      keys = opened;
      values = new Map(drafts.filter(Boolean).map(({ name, value }) => [name, value]));
    },

    /** Forgets what is in memory, after storing what is due. */
    async close() {
      await flush();
      keys = null;
      values = new Map();
    },
  };
}
