/**
 * What sync does with a ledger's rows: each step is one transaction, so that a crash leaves the step done or not done.
 *
 *     settle(verdicts)                     the clinic's answers to a push
 *     takeIn(records, cursor, more, find)  a page of the feed with its cursor
 *     stage(records, cursor)               the same while a new feed is fetched beside the old one
 *     swap(find)                           the new feed in place of the old; the outbox is kept
 *
 * After a restored backup the clinic may lack records that it once had. Those made on this phone go back to the outbox.
 */
import { fromRows, toRow } from './rows.js';
import { seal } from './vault.js';

/** @typedef {import('./envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('./outbox.js').Verdict} Verdict */
/** @typedef {(id: string) => LedgerRecord | undefined} Find */
/** @typedef {{cursor: string, staging: null | {cursor: string}, complete: boolean, lastHeard: string | null}} Place */

/**
 * @param {import('./db.js').Database} db
 * @param {() => import('./vault.js').Keys} keys  throws when locked
 * @param {string} device  id of this phone
 */
export function exchange(db, keys, device) {
  return {
    /** @returns {Promise<Place>}  where this phone stands in the clinic's feed */
    place() {
      return db.run(['meta'], 'readonly', async tx => {
        const meta = tx.objectStore('meta');
        const [cursor, staging, complete, lastHeard] = await Promise.all(
          ['cursor', 'staging', 'complete', 'lastHeard'].map(key => meta.get(key)),
        );
        return { cursor: cursor ?? '', staging: staging ?? null, complete: complete ?? false, lastHeard: lastHeard ?? null };
      });
    },

    /** @param {string} when  ISO time of this device */
    async heard(when) {
      await db.run(['meta'], 'readwrite', tx => tx.objectStore('meta').put(when, 'lastHeard'));
    },

    /** @param {Verdict[]} verdicts */
    async settle(verdicts) {
      const reasons = new Map(await Promise.all(
        verdicts.filter(({ to }) => to === 'attention').map(async ({ id, answer }) => {
          const { code = '', text = '', field = '' } = answer ?? {};
          return /** @type {const} */ ([id, await seal(keys(), `reason:${id}`, { code, text, field })]);
        }),
      ));
      await db.run(['records', 'outbox'], 'readwrite', async tx => {
        const records = tx.objectStore('records');
        const outbox = tx.objectStore('outbox');
        await Promise.all(verdicts.map(async ({ id, to, answer }) => {
          if (to === 'sent') {
            const row = await records.get(id);
            if (row) await records.put({ ...row, position: answer?.position ?? null, receivedAt: answer?.received_at ?? null });
            await outbox.delete(id);
          }
          const entry = to === 'attention' && (await outbox.get(id));
          if (entry) await outbox.put({ ...entry, ...reasons.get(id), state: 'attention' });
        }));
      }, { strict: true });
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
     * @param {LedgerRecord[]} records
     * @param {string} cursor
     * @param {boolean} more  whether the feed goes on
     * @param {Find} find  what this phone holds
     * @returns {Promise<Set<string>>}  ids of the records that were taken
     */
    async takeIn(records, cursor, more, find) {
      const rows = await Promise.all(records.map(record => toRow(keys(), record)));
      const same = new Set(records.filter(record => isSame(find(record.id), record)).map(record => record.id));
      return db.run(['records', 'outbox', 'meta'], 'readwrite', async tx => {
        const store = tx.objectStore('records');
        const outbox = tx.objectStore('outbox');
        const waiting = new Set(await outbox.getAllKeys());
        for (const id of await carriedIds(outbox)) same.add(id);
        // The clinic's copy of an unsent record is the answer to a push whose reply was lost. One that differs is no such
        // answer: ours stays, and its push will say so. Of what is only carried here, the clinic's copy is always the answer.
        const taken = rows.filter(row => !waiting.has(row.id) || same.has(row.id));
        await Promise.all(taken.map(row => store.put(row)));
        await Promise.all(taken.filter(row => waiting.has(row.id)).map(row => outbox.delete(row.id)));
        await tx.objectStore('meta').put(cursor, 'cursor');
        if (!more) await tx.objectStore('meta').put(true, 'complete');
        return new Set(taken.map(row => row.id));
      });
    },

    /** Begins afresh beside what is here. */
    async startStaging() {
      await db.run(['staging', 'meta'], 'readwrite', async tx => {
        await tx.objectStore('staging').clear();
        await tx.objectStore('meta').put({ cursor: '' }, 'staging');
      });
    },

    /**
     * @param {LedgerRecord[]} records
     * @param {string} cursor
     */
    async stage(records, cursor) {
      const rows = await Promise.all(records.map(record => toRow(keys(), record)));
      await db.run(['staging', 'meta'], 'readwrite', async tx => {
        await Promise.all(rows.map(row => tx.objectStore('staging').put(row)));
        await tx.objectStore('meta').put({ cursor }, 'staging');
      });
    },

    /** @param {Find} find  what this phone holds */
    async swap(find) {
      const staged = await db.run(['staging'], 'readonly', tx => tx.objectStore('staging').getAll());
      const { opened } = await fromRows(keys(), staged);
      const same = new Set(opened.filter(record => isSame(find(record.id), record)).map(record => record.id));
      const fetched = new Set(staged.map(row => row.id));
      await db.run(['records', 'staging', 'outbox', 'meta'], 'readwrite', async tx => {
        const records = tx.objectStore('records');
        const outbox = tx.objectStore('outbox');
        const meta = tx.objectStore('meta');
        const waiting = new Set(await outbox.getAllKeys());
        for (const id of await carriedIds(outbox)) same.add(id);
        for (const id of await records.getAllKeys()) {
          if (waiting.has(id) || fetched.has(id)) continue;
          const record = find(String(id));
          if (record?.device === device) await outbox.put(await newEntry(outbox, record.id, record.recorded_at));
          else if (record) await records.delete(id);
        }
        for (const row of staged) {
          if (waiting.has(row.id) && !same.has(row.id)) continue;
          await records.put(row);
          await outbox.delete(row.id);
        }
        await meta.put((await meta.get('staging')).cursor, 'cursor');
        await meta.put(true, 'complete');
        await meta.put(true, 'recoveryAgain');
        await meta.delete('staging');
        await tx.objectStore('staging').clear();
      }, { strict: true });
    },
  };
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
