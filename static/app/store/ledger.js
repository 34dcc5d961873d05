/**
 * One person's records in one clinic, on this phone: locked, or open with everything in memory.
 *
 * The database holds sealed rows; `records` and `outbox` show what is in it. Other tabs of the same ledger are told of each
 * change by ids and read the rows themselves.
 */
import { Fault } from '../fault.js';
import { observable } from '../observable.js';
import { rowsOf } from './batches.js';
import { carrying, fromNote } from './carrying.js';
import { database } from './db.js';
import { draftBook } from './drafts.js';
import { entrance } from './entrance.js';
import { envelope } from './envelope.js';
import { addMade } from './entries.js';
import { exchange } from './exchange.js';
import { inPlaceOf } from './outbox.js';
import { fromRows, toRow } from './rows.js';
import { LEDGER_STEPS } from './schema.js';
import { forgetTries } from './tries.js';
import { unseal } from './vault.js';
import { gatherWords, withWord, wordsIn } from './words.js';

/** @typedef {import('./envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('./outbox.js').Entry} Entry */
/** @typedef {import('./vault.js').Keys} Keys */
/** @typedef {ReturnType<typeof openLedger>} Ledger */
/** @typedef {{id?: string, patient?: string, supersedes?: string[], body: unknown, draft?: string}} Saving */

/**
 * @param {object} who
 * @param {string} who.author  user name
 * @param {string} who.clinic  id
 * @param {string} who.device  id
 * @param {object} [options]
 * @param {(notice: import('./db.js').Notice) => void} [options.notify]
 * @param {(error: any) => void} [options.onProblem]  a write in the background failed
 * @param {number} [options.rounds]  of the key derivation
 * @param {() => number} [options.now]
 * @param {string} [options.place]  keeps two phones apart in one process
 */
export function openLedger({ author, clinic, device }, { notify, onProblem, rounds, now, place = '' } = {}) {
  const db = database(ledgerName(author, clinic, place), LEDGER_STEPS, { notify });
  const channel = new BroadcastChannel(db.name);
  /** @type {Keys | null} */
  let keys = null;
  /** @type {Map<string, LedgerRecord>} */
  const byId = new Map();
  let reading = 0;
  let underWay = 0;

  /** @type {import('../observable.js').Observable<readonly LedgerRecord[]>} */
  const records = observable(/** @type {readonly LedgerRecord[]} */ ([]));
  /** @type {import('../observable.js').Observable<readonly Entry[]>} */
  const outbox = observable(/** @type {readonly Entry[]} */ ([]));
  /** @type {import('../observable.js').Observable<readonly string[]>} */
  const broken = observable(/** @type {readonly string[]} */ ([]));

  const drafts = draftBook(db, 'drafts', { onProblem });
  const kept = draftBook(db, 'kept', { onProblem });
  const rows = exchange(db, opened);
  const others = carrying(db, opened);
  const find = (/** @type {string} */ id) => byId.get(id);
  const isRefused = (/** @type {string} */ id) =>
    outbox.get().some(entry => entry.id === id && entry.state === 'attention' && !entry.carried);

  function opened() {
    if (!keys) throw new Fault('locked', 'Unlock first.');
    return keys;
  }

  /** @param {Keys} open */
  async function enter(open) {
    await drafts.open(open);
    await kept.open(open);
    keys = open;
    await readAll();
    await readOutbox();
  }

  async function readAll() {
    await db.run(['words'], 'readwrite', tx => gatherWords(tx.objectStore('words'))).catch(error => onProblem?.(error));
    const found = await fromRows(opened(), await rowsHere(store => store.getAll()));
    byId.clear();
    show(found.opened);
    broken.set(found.broken);
  }

  /**
   * @param {(records: any) => Promise<import('./rows.js').Row[]>} read
   * @returns {Promise<import('./rows.js').Row[]>}  with the clinic's latest word on each
   */
  function rowsHere(read) {
    return db.run(['records', 'words'], 'readonly', async tx => {
      const [rows, words] = await Promise.all([read(tx.objectStore('records')), wordsIn(tx.objectStore('words'))]);
      return rows.map(row => withWord(row, words));
    });
  }

  /** @param {LedgerRecord[]} changed */
  function show(changed) {
    if (!keys) return;
    for (const record of changed) byId.set(record.id, record);
    records.set([...byId.values()]);
  }

  /**
   * What may no longer be here: the rows are gone already; with them go what this tab shows and what was made of them.
   *
   * @param {string[]} ids
   */
  function forget(ids) {
    for (const id of ids) byId.delete(id);
    for (const name of kept.names()) if (ids.some(id => name.includes(id))) kept.drop(name);
  }

  async function readOutbox() {
    const turn = ++reading;
    underWay += 1;
    try {
      const rows = await db.run(['outbox'], 'readonly', tx => tx.objectStore('outbox').index('sequence').getAll());
      const entries = await Promise.all(rows.map(toEntry));
      // Of readings under way together, the one that began last saw the latest state.
      if (turn === reading) outbox.set(entries);
    } finally {
      underWay -= 1;
    }
  }

  /**
   * A record just saved stands behind all others, so that a long outbox need not be read again for it.
   *
   * @param {any} row
   */
  async function joinOutbox(row) {
    if (underWay || outbox.get().some(({ id, sequence }) => id === row.id || sequence >= row.sequence)) return readOutbox();
    const entry = await toEntry(row);
    outbox.set([...outbox.get(), entry]);
  }

  /**
   * What was sent and nothing else leaves a long outbox without a reading of all that stays. A reading under way may have seen it
   * as it was, so it is then read again.
   *
   * @param {import('./outbox.js').Verdict[]} verdicts
   */
  async function leaveOutbox(verdicts) {
    if (underWay || verdicts.some(({ to }) => to === 'attention')) return readOutbox();
    const gone = new Set(verdicts.filter(({ to }) => to === 'sent').map(({ id }) => id));
    outbox.set(outbox.get().filter(({ id }) => !gone.has(id)));
  }

  /**
   * @param {any} row
   * @returns {Promise<Entry>}
   */
  async function toEntry({ id, sequence, state, since, carried: note = null, offered = false, iv, sealed }) {
    const reason = keys && sealed ? await unseal(keys, `reason:${id}`, { iv, sealed }) : {};
    const { code = '', text = '', field = '' } = reason;
    const carried = await fromNote(keys, id, note);
    return { id, sequence, state, since, carried, offered, code, text, field };
  }

  /** @param {string[] | 'all'} ids */
  const tellOthers = ids => channel.postMessage(ids);

  channel.onmessage = async ({ data: ids }) => {
    try {
      if (ids === 'all' && keys) await readAll();
      if (Array.isArray(ids) && ids.length && keys) {
        const fresh = await rowsHere(store => rowsOf(store, new Map(ids.map(id => [id, null]))));
        show((await fromRows(opened(), fresh)).opened);
      }
      await readOutbox();
    } catch (error) {
      onProblem?.(error);
    }
  };

  return {
    name: db.name,
    author,
    clinic,
    device,
    records,
    outbox,
    /** Ids of rows that were altered or damaged and cannot be read. */
    broken,
    drafts,
    kept,
    find,
    ...entrance(db, { rounds, now, keys: opened, enter, onProblem }),

    isOpen: () => keys !== null,

    /** Reads the states of the outbox, which are in clear, before anything is unlocked. */
    readOutbox,

    /** What would be lost with this phone: records that the clinic has not got, and drafts. Counted without opening any. */
    async unsent() {
      await drafts.flush();
      const entries = await db.run(['outbox'], 'readonly', tx => tx.objectStore('outbox').count());
      return { records: entries, drafts: await drafts.count() };
    },

    /**
     * Resolves when the record, and its entry in the outbox, are stored. What supersedes one record that the clinic refused
     * is stored and sent in that one's place.
     *
     * @param {string} kind
     * @param {Saving} saving
     * @returns {Promise<LedgerRecord>}
     * @throws {Fault} locked, storage_full, storage_timeout, ...
     */
    async save(kind, { id, patient, supersedes, body, draft }) {
      const made = await envelope({ id, kind, patient, supersedes, body, from: { clinic, author, device } });
      const [refused, ...more] = made.supersedes.filter(isRefused).map(find);
      const sealed = async (/** @type {LedgerRecord} */ record) => ({ record, row: await toRow(opened(), record) });
      const inPlace = refused && !more.length ? await sealed(inPlaceOf(made, refused)) : null;
      const anew = await sealed(made);
      const taken = draft === undefined ? null : await drafts.take(draft);
      let entered;
      try {
        entered = await db.run(['records', 'outbox', 'drafts'], 'readwrite', async tx => {
          if (taken) await tx.objectStore('drafts').delete(taken.key);
          return addMade(tx, anew, inPlace);
        }, { strict: true });
      } catch (error) {
        if (draft !== undefined && taken?.value !== undefined) drafts.keep(draft, taken.value);
        throw error;
      }
      const stored = Object.freeze({ ...entered.record, position: null, received_at: null });
      show([stored]);
      await joinOutbox(entered.entry);
      tellOthers([stored.id]);
      return stored;
    },

    hasCarryingKey: others.hasCarryingKey,
    keepCarryingKey: others.keepCarryingKey,
    tags: others.tags,

    /**
     * @param {import('./carrying.js').Item[]} items
     * @returns {Promise<string[]>}  ids of the records that were new here
     */
    async takeOver(items) {
      const taken = await others.takeOver(items, find);
      const isTaken = new Set(taken);
      show(items.filter(({ record }) => isTaken.has(record.id)).map(({ record }) => Object.freeze(record)));
      await readOutbox();
      tellOthers(taken);
      return taken;
    },

    place: rows.place,
    heard: rows.heard,
    startStaging: rows.startStaging,
    noteRestored: rows.noteRestored,
    stage: rows.stage,

    /** @param {string} id */
    async retry(id) {
      await rows.retry(id);
      await readOutbox();
      tellOthers([]);
    },

    /**
     * @param {import('./outbox.js').Verdict[]} verdicts
     * @param {import('./exchange.js').Step | null} [step]
     * @returns {Promise<boolean>}  whether all of it was stored, the step in the feed included
     */
    async settle(verdicts, step) {
      const { whole, stale } = await rows.settle(verdicts, step);
      const settled = verdicts.filter(({ id }) => !stale.has(id));
      const sent = settled.filter(({ to, id }) => to === 'sent' && byId.has(id));
      show(sent.map(({ id, answer }) => Object.freeze({
        .../** @type {LedgerRecord} */ (byId.get(id)),
        position: answer?.position ?? null,
        received_at: answer?.received_at ?? null,
        receipt: answer?.receipt ?? byId.get(id)?.receipt ?? null,
      })));
      await leaveOutbox(settled);
      tellOthers(sent.map(({ id }) => id));
      return whole;
    },

    /** @param {import('./exchange.js').Page} page */
    async takeIn(page) {
      const { taken, removed } = await rows.takeIn(page, find);
      forget(removed);
      if (!taken.size && !removed.length) return;
      show(page.records.filter(record => taken.has(record.id)).map(record => Object.freeze(record)));
      await readOutbox();
      tellOthers(removed.length ? 'all' : [...taken]);
    },

    /** @param {string} reached  the cursor at which the new feed is complete */
    async swap(reached) {
      const before = [...byId.keys()];
      await rows.swap(reached, find);
      await readAll();
      forget(before.filter(id => !byId.has(id)));
      await readOutbox();
      tellOthers('all');
    },

    async lock() {
      await drafts.close();
      await kept.close();
      keys = null;
      byId.clear();
      records.set([]);
      await readOutbox();
    },

    /** Lets go of the database; what is in it stays. */
    close() {
      channel.close();
      db.close();
    },

    /** Removes the database with all that is in it. Whoever calls this has made sure that nothing unsent is lost. */
    async erase() {
      channel.close();
      await db.erase();
      forgetTries(db.name);
    },

    /** Tries the connection, which phones lose while the app is in the background. */
    check: () => db.run(['meta'], 'readonly', tx => tx.objectStore('meta').count()),
  };
}

/**
 * @param {string} author
 * @param {string} clinic
 * @param {string} place
 */
function ledgerName(author, clinic, place) {
  return `ledger${place}/${clinic}/${author}`;
}
