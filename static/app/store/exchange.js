/**
 * What sync does with a ledger's rows: each step is one transaction, so that a crash leaves the step done or not done.
 *
 *     settle(verdicts, step)               the clinic's answers to a push, and how far they bring this phone in the feed
 *     takeIn(page, find)                   a page of the feed: its records, what has left this phone's scope, and its cursor
 *     stage(page)                          the same while a new feed is fetched beside the old one
 *     swap(reached, find)                  the new feed, complete at that cursor, in place of the old; the outbox is kept
 *
 * A page says which cursor it was asked with (`after`), and goes in only where this phone still stands there. Where there is no
 * lock between tabs, two may fetch at once: what comes second is then left out, and neither puts a half-fetched feed in place.
 *
 * Where the new feed is that of a restored backup, the clinic may lack records that it once had: all that this phone holds and
 * the feed lacks is offered to it again, with receipts. Some of it the clinic may have after all and keep from this phone (its
 * scope is another by now), so everything is fetched once more when nothing offered waits any longer (`recheck`). Where only
 * the scope has changed, what the new feed lacks is removed.
 */
import { fromRows, toRow } from './rows.js';
import { seal } from './vault.js';

/** @typedef {import('./envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('./outbox.js').Verdict} Verdict */
/** @typedef {(id: string) => LedgerRecord | undefined} Find */
/** @typedef {{cursor: string, restored: boolean}} Staging  `restored`: of a ledger that may lack what this phone holds */
/** @typedef {{cursor: string, staging: Staging | null, recheck: boolean, complete: boolean, lastHeard: string | null}} Place */
/** @typedef {{records: LedgerRecord[], removed: string[], after: string, cursor: string, more: boolean}} Page */
/** @typedef {{after: string, cursor: string}} Step  from one place in the feed to another, past records that are all here */

/**
 * @param {import('./db.js').Database} db
 * @param {() => import('./vault.js').Keys} keys  throws when locked
 */
export function exchange(db, keys) {
  return {
    /** @returns {Promise<Place>}  where this phone stands in the clinic's feed */
    place() {
      return db.run(['meta'], 'readonly', async tx => {
        const meta = tx.objectStore('meta');
        const [cursor = '', staging = null, recheck = false, complete = false, lastHeard = null] = await Promise.all(
          ['cursor', 'staging', 'recheck', 'complete', 'lastHeard'].map(key => meta.get(key)),
        );
        return { cursor, staging, recheck, complete, lastHeard };
      });
    },

    /** @param {string} when  ISO time of this device */
    async heard(when) {
      await db.run(['meta'], 'readwrite', tx => tx.objectStore('meta').put(when, 'lastHeard'));
    },

    /**
     * Not written through to the disk before it counts: what a failing phone forgets of it is sent again and answered the same.
     *
     * @param {Verdict[]} verdicts
     * @param {Step | null} [step]  taken only from where this phone stands, and only with all that was sent still here
     * @returns {Promise<boolean>}  whether it was taken
     */
    async settle(verdicts, step = null) {
      const reasons = new Map(await Promise.all(
        verdicts.filter(({ to }) => to === 'attention').map(async ({ id, answer }) => {
          const { code = '', text = '', field = '' } = answer ?? {};
          return /** @type {const} */ ([id, await seal(keys(), `reason:${id}`, { code, text, field })]);
        }),
      ));
      const sent = new Map(verdicts.filter(({ to }) => to === 'sent').map(({ id, answer }) => [id, answer]));
      return db.run(['records', 'outbox', 'meta'], 'readwrite', async tx => {
        const outbox = tx.objectStore('outbox');
        const rows = await rowsOf(tx.objectStore('records'), sent);
        for (const row of rows) {
          const { position = null, received_at: receivedAt = null, receipt = row.receipt ?? null } = sent.get(row.id) ?? {};
          tx.objectStore('records').put({ ...row, position, receivedAt, receipt });
        }
        await dropAll(outbox, sent);
        await Promise.all([...reasons].map(async ([id, reason]) => {
          const entry = await outbox.get(id);
          if (entry) await outbox.put({ ...entry, ...reason, state: 'attention' });
        }));
        const meta = tx.objectStore('meta');
        if (!step || rows.length < sent.size || (await meta.get('staging')) || ((await meta.get('cursor')) ?? '') !== step.after) return false;
        await meta.put(step.cursor, 'cursor');
        return true;
      });
    },

    /** @param {string} id  of a record that needs attention and is to be sent again */
    async retry(id) {
      await db.run(['outbox'], 'readwrite', async tx => {
        const outbox = tx.objectStore('outbox');
        const entry = await outbox.get(id);
        const { iv: _iv, sealed: _sealed, ...facts } = entry ?? {};
        if (entry) await outbox.put({ ...facts, state: 'waiting' });
      }, { strict: true });
    },

    /**
     * @param {Page} page  `more`: whether the feed goes on
     * @param {Find} find  what this phone holds
     * @returns {Promise<{taken: Set<string>, removed: string[]}>}  ids; never removed is what the clinic has not got
     */
    async takeIn({ records, removed, after, cursor, more }, find) {
      const rows = await Promise.all(records.map(record => toRow(keys(), record)));
      const same = new Set(records.filter(record => isSame(find(record.id), record)).map(record => record.id));
      return db.run(['records', 'outbox', 'meta'], 'readwrite', async tx => {
        const meta = tx.objectStore('meta');
        if ((await meta.get('staging')) || ((await meta.get('cursor')) ?? '') !== after) return { taken: new Set(), removed: [] };
        const store = tx.objectStore('records');
        const outbox = tx.objectStore('outbox');
        const waiting = new Set(await outbox.getAllKeys());
        for (const id of await carriedIds(outbox)) same.add(id);
        // The clinic's copy of an unsent record is the answer to a push whose reply was lost. One that differs is no such
        // answer: ours stays, and its push will say so. Of what is only carried here, the clinic's copy is always the answer.
        const taken = rows.filter(row => !waiting.has(row.id) || same.has(row.id));
        const gone = removed.filter(id => !waiting.has(id));
        await Promise.all(gone.map(id => store.delete(id)));
        await Promise.all(taken.map(row => store.put(row)));
        await Promise.all(taken.filter(row => waiting.has(row.id)).map(row => outbox.delete(row.id)));
        await meta.put(cursor, 'cursor');
        if (!more) await meta.put(true, 'complete');
        return { taken: new Set(taken.map(row => row.id)), removed: gone };
      });
    },

    /**
     * Begins afresh beside what is here. What was once found to be a restored ledger stays one until the swap.
     *
     * @param {{restored: boolean}} why
     */
    async startStaging({ restored }) {
      await db.run(['staging', 'meta'], 'readwrite', async tx => {
        const meta = tx.objectStore('meta');
        const before = /** @type {Staging | undefined} */ (await meta.get('staging'));
        await tx.objectStore('staging').clear();
        await meta.put({ cursor: '', restored: restored || isOfRestored(before) }, 'staging');
      });
    },

    /** What is staged is found to be of a restored ledger. */
    async noteRestored() {
      await db.run(['meta'], 'readwrite', async tx => {
        const meta = tx.objectStore('meta');
        const staging = await meta.get('staging');
        if (staging) await meta.put({ ...staging, restored: true }, 'staging');
      });
    },

    /** @param {Omit<Page, 'more'>} page  what it removes was staged before, and is not told again */
    async stage({ records, removed, after, cursor }) {
      const rows = await Promise.all(records.map(record => toRow(keys(), record)));
      await db.run(['staging', 'meta'], 'readwrite', async tx => {
        const meta = tx.objectStore('meta');
        const staging = await meta.get('staging');
        if (staging?.cursor !== after) return;
        const store = tx.objectStore('staging');
        await Promise.all(removed.map(id => store.delete(id)));
        await Promise.all(rows.map(row => store.put(row)));
        await meta.put({ ...staging, cursor }, 'staging');
      });
    },

    /**
     * @param {string} reached
     * @param {Find} find  what this phone holds
     */
    async swap(reached, find) {
      const staged = await db.run(['staging', 'meta'], 'readonly', async tx =>
        (await tx.objectStore('meta').get('staging'))?.cursor === reached ? tx.objectStore('staging').getAll() : null);
      if (!staged) return;
      const { opened } = await fromRows(keys(), staged);
      const same = new Set(opened.filter(record => isSame(find(record.id), record)).map(record => record.id));
      const fetched = new Set(staged.map(row => row.id));
      await db.run(['records', 'staging', 'outbox', 'meta'], 'readwrite', async tx => {
        const records = tx.objectStore('records');
        const outbox = tx.objectStore('outbox');
        const meta = tx.objectStore('meta');
        const staging = /** @type {Staging | undefined} */ (await meta.get('staging'));
        if (staging?.cursor !== reached) return;
        const waiting = new Set(await outbox.getAllKeys());
        for (const id of await carriedIds(outbox)) same.add(id);
        const lacking = (await records.getAllKeys()).filter(id => !waiting.has(id) && !fetched.has(id))
          .map(id => find(String(id))).filter(record => record !== undefined).sort(inFeedOrder);
        for (const record of lacking) {
          if (!isOfRestored(staging)) await records.delete(record.id);
          else await outbox.put({ ...(await newEntry(outbox, record.id, record.recorded_at)), offered: true });
        }
        for (const row of staged) {
          if (waiting.has(row.id) && !same.has(row.id)) continue;
          await records.put(row);
          await outbox.delete(row.id);
        }
        await meta.put(staging.cursor, 'cursor');
        const entries = await outbox.getAll();
        await meta.put(entries.some((/** @type {any} */ entry) => entry.offered && entry.state === 'waiting'), 'recheck');
        await meta.put(true, 'complete');
        await meta.put(true, 'recoveryAgain');
        await meta.delete('staging');
        await tx.objectStore('staging').clear();
      }, { strict: true });
    },
  };
}

/**
 * What a batch is of was mostly made one after the other, and ids follow the time: one reading from the first to the last then
 * brings it, where a reading of each would take longer than all else.
 *
 * @param {any} store
 * @param {Map<string, unknown>} ids
 * @returns {Promise<any[]>}  the rows that are there
 */
async function rowsOf(store, ids) {
  if (!ids.size) return [];
  const span = spanOf(ids);
  if ((await store.count(span)) > 2 * ids.size) {
    return (await Promise.all([...ids.keys()].map(id => store.get(id)))).filter(Boolean);
  }
  return (await store.getAll(span)).filter((/** @type {any} */ row) => ids.has(row.id));
}

/**
 * @param {any} store
 * @param {Map<string, unknown>} ids
 */
async function dropAll(store, ids) {
  if (!ids.size) return;
  const span = spanOf(ids);
  const found = /** @type {string[]} */ (await store.getAllKeys(span));
  if (found.every(id => ids.has(id))) await store.delete(span);
  else await Promise.all([...ids.keys()].map(id => store.delete(id)));
}

/** @param {Map<string, unknown>} ids  at least one */
function spanOf(ids) {
  const sorted = [...ids.keys()].sort();
  return IDBKeyRange.bound(sorted[0], sorted[sorted.length - 1]);
}

/**
 * @param {any} outbox  the store
 * @returns {Promise<string[]>}  ids of the records that other devices made and this one carries
 */
async function carriedIds(outbox) {
  const rows = await outbox.getAll();
  return rows.filter((/** @type {any} */ row) => row.carried).map((/** @type {any} */ row) => row.id);
}

/**
 * A staging place of the app's first version does not say.
 *
 * @param {Staging | null | undefined} staging
 */
function isOfRestored(staging) {
  return Boolean(staging) && staging?.restored !== false;
}

/**
 * The order in which the clinic had them, in which nothing comes before what it mentions.
 *
 * @param {LedgerRecord} a
 * @param {LedgerRecord} b
 */
function inFeedOrder(a, b) {
  return (a.position ?? Infinity) - (b.position ?? Infinity) || (a.id < b.id ? -1 : 1);
}

/**
 * @param {any} outbox  the store, in the transaction that adds the entry
 * @param {string} id
 * @param {string} since
 * @returns {Promise<object>}  the row of a record that waits behind all others
 */
export async function newEntry(outbox, id, since) {
  const last = await outbox.index('sequence').openKeyCursor(null, 'prev');
  return { id, sequence: last ? Number(last.key) + 1 : 1, since, state: 'waiting' };
}

/**
 * @param {LedgerRecord | undefined} ours
 * @param {LedgerRecord} theirs
 */
function isSame(ours, theirs) {
  return ours?.digest === theirs.digest && ours?.kind === theirs.kind && ours?.patient === theirs.patient;
}
