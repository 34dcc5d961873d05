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
import { dropAll, keysOf, putAll, rowsOf } from './batches.js';
import { entriesOf, newEntry } from './entries.js';
import { fromRows, toRow } from './rows.js';
import { seal } from './vault.js';
import { forgetWords, noteWords, withWord, wordsIn } from './words.js';

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
     * Another tab may have put a correction under the same id meanwhile: the answer is then not about what is here, which waits.
     *
     * @param {Verdict[]} verdicts
     * @param {Step | null} [step]  taken only from where this phone stands, and only with all that was sent still here
     * @returns {Promise<{whole: boolean, stale: Set<string>}>}  whether all of it was stored, the step included, and the ids of what was
     *   corrected meanwhile
     */
    async settle(verdicts, step = null) {
      const reasons = new Map(await Promise.all(
        verdicts.filter(({ to }) => to === 'attention').map(async ({ id, answer }) => {
          const { code = '', text = '', field = '' } = answer ?? {};
          return /** @type {const} */ ([id, await seal(keys(), `reason:${id}`, { code, text, field })]);
        }),
      ));
      const made = new Map(verdicts.map(({ id, made }) => [id, made]));
      return db.run(['records', 'words', 'outbox', 'meta'], 'readwrite', async tx => {
        const outbox = tx.objectStore('outbox');
        const entries = await rowsOf(outbox, made);
        const stale = new Set(entries.filter(({ id, since }) => since !== made.get(id)).map(({ id }) => id));
        const sent = new Map(verdicts.filter(({ id, to }) => to === 'sent' && !stale.has(id)).map(({ id, answer }) => [id, answer]));
        const here = await keysOf(tx.objectStore('records'), sent);
        await noteWords(tx.objectStore('words'), here.map(id => {
          const { position = null, received_at: receivedAt = null, receipt = null } = sent.get(id) ?? {};
          return { id, position, receivedAt, receipt };
        }));
        await dropAll(outbox, sent);
        for (const entry of entries) {
          const reason = !stale.has(entry.id) && reasons.get(entry.id);
          if (reason) await outbox.put({ ...entry, ...reason, state: 'attention' });
        }
        const meta = tx.objectStore('meta');
        const whole = !stale.size && here.length === sent.size;
        if (!whole || !step) return { whole, stale };
        if ((await meta.get('staging')) || ((await meta.get('cursor')) ?? '') !== step.after) return { whole: false, stale };
        await meta.put(step.cursor, 'cursor');
        return { whole: true, stale };
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
      const same = sameHere(records, find);
      return db.run(['records', 'words', 'outbox', 'meta'], 'readwrite', async tx => {
        const meta = tx.objectStore('meta');
        if ((await meta.get('staging')) || ((await meta.get('cursor')) ?? '') !== after) return { taken: new Set(), removed: [] };
        const store = tx.objectStore('records');
        const outbox = tx.objectStore('outbox');
        const waiting = await entriesOf(outbox);
        const taken = rows.filter(row => isTaken(row, waiting, same));
        const gone = removed.filter(id => !waiting.has(id));
        await Promise.all(gone.map(id => store.delete(id)));
        await forgetWords(tx.objectStore('words'), gone);
        await putAll(store, taken);
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
        await putAll(store, rows);
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
      const same = sameHere(opened, find);
      const fetched = new Set(staged.map(row => row.id));
      await db.run(['records', 'words', 'staging', 'outbox', 'meta'], 'readwrite', async tx => {
        const records = tx.objectStore('records');
        const outbox = tx.objectStore('outbox');
        const meta = tx.objectStore('meta');
        const staging = /** @type {Staging | undefined} */ (await meta.get('staging'));
        if (staging?.cursor !== reached) return;
        const waiting = await entriesOf(outbox);
        await keepWords(records, tx.objectStore('words'), fetched);
        const lacking = (await records.getAllKeys()).filter(id => !waiting.has(id) && !fetched.has(id))
          .map(id => find(String(id))).filter(record => record !== undefined).sort(inFeedOrder);
        for (const record of lacking) {
          if (!isOfRestored(staging)) await records.delete(record.id);
          else await outbox.put({ ...(await newEntry(outbox, record.id, record.recorded_at)), offered: true });
        }
        for (const row of staged) {
          if (!isTaken(row, waiting, same)) continue;
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
 * What the clinic said of records in its old feed stands in their own rows from now on: the words to come are of the new one.
 *
 * @param {any} records
 * @param {any} words
 * @param {Set<string>} fetched  what the new feed brings, with its own words
 */
async function keepWords(records, words, fetched) {
  const said = new Map([...(await wordsIn(words))].filter(([id]) => !fetched.has(id)));
  await putAll(records, (await rowsOf(records, said)).map(row => withWord(row, said)));
  await words.clear();
}

/**
 * The clinic's copy of an unsent record is the answer to a push whose reply was lost. One that differs is no such answer: ours
 * stays, and its push will say so; so it is where another tab has corrected ours since. Of what is only carried here, the
 * clinic's copy is always the answer.
 *
 * @param {{id: string}} row  the clinic's
 * @param {Map<string, any>} waiting
 * @param {Map<string, string>} same
 */
function isTaken({ id }, waiting, same) {
  const entry = waiting.get(id);
  return !entry || Boolean(entry.carried) || entry.since === same.get(id);
}

/**
 * @param {LedgerRecord[]} records  the clinic's
 * @param {Find} find
 * @returns {Map<string, string>}  when those were made that are the same here, by id
 */
function sameHere(records, find) {
  const ours = records.filter(record => isSame(find(record.id), record)).map(({ id }) => /** @type {LedgerRecord} */ (find(id)));
  return new Map(ours.map(({ id, recorded_at }) => [id, recorded_at]));
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
 * @param {LedgerRecord | undefined} ours
 * @param {LedgerRecord} theirs
 */
function isSame(ours, theirs) {
  return ours?.digest === theirs.digest && ours?.kind === theirs.kind && ours?.patient === theirs.patient;
}
