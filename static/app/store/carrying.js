/**
 * Records that another device made and handed over in a file, on their way to the clinic by this one.
 *
 * Each is shown at once. Its entry in the outbox says `carried: {tag, stuck, by}`: `tag` is the seal of the device that made it,
 * by which the clinic knows that it is genuine ("Carried records" in `clinic/sync/protocol.py`); a `stuck` one has no seal, or
 * was refused before, and waits for its own device; `by` is the maker's name, sealed. Where the clinic's copy comes, it takes
 * the place of a carried one.
 *
 * This phone's own key for such seals lies in `meta` under `carrying`, sealed.
 */
import { canonical } from './canonical.js';
import { newEntry } from './entries.js';
import { hex, unhex } from './hex.js';
import { toRow } from './rows.js';
import { seal, unseal } from './vault.js';

/** @typedef {import('./envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {{tag: string, stuck: boolean, maker: string}} Carried  `maker`: full name of the author, as the file told it */
/**
 * @typedef {object} Item
 * @property {LedgerRecord} record
 * @property {boolean} sent  the clinic has it
 * @property {Carried | null} carried  null also for what this very device made, before its storage was lost
 */

/**
 * @param {import('./db.js').Database} db
 * @param {() => import('./vault.js').Keys} keys  throws when locked
 */
export function carrying(db, keys) {
  const kept = () => db.run(['meta'], 'readonly', tx => tx.objectStore('meta').get('carrying'));

  return {
    hasCarryingKey: async () => Boolean(await kept()),

    /** @param {string} key  in hexadecimal, as the clinic gave it to this device */
    async keepCarryingKey(key) {
      const sealed = await seal(keys(), 'carrying', key);
      await db.run(['meta'], 'readwrite', tx => tx.objectStore('meta').put(sealed, 'carrying'), { strict: true });
    },

    /**
     * @param {LedgerRecord[]} records  made on this device
     * @returns {Promise<string[]>}  the seal of each; empty while the clinic has given no key
     */
    async tags(records) {
      const row = await kept();
      if (!row) return records.map(() => '');
      const key = await hmacKey(await unseal(keys(), 'carrying', row));
      return Promise.all(records.map(record => tagOf(key, record)));
    },

    /**
     * Stores what is new, all or nothing.
     *
     * @param {Item[]} items
     * @param {(id: string) => LedgerRecord | undefined} find  what this phone holds
     * @returns {Promise<string[]>}  ids of the records that were taken
     */
    async takeOver(items, find) {
      const rows = await Promise.all(items.map(({ record }) => toRow(keys(), record)));
      const notes = await Promise.all(items.map(({ record, carried }) => carried && noteOf(keys(), record.id, carried)));
      return db.run(['records', 'outbox'], 'readwrite', async tx => {
        const records = tx.objectStore('records');
        const outbox = tx.objectStore('outbox');
        /** @type {string[]} */
        const taken = [];
        for (const [index, { record, sent, carried }] of items.entries()) {
          const entry = await outbox.get(record.id);
          const ours = find(record.id);
          if (ours && !replaces(record, ours, entry)) {
            if (entry?.carried?.stuck && carried && !carried.stuck) await outbox.put({ ...entry, carried: notes[index] });
            continue;
          }
          await records.put(rows[index]);
          if (sent) await outbox.delete(record.id);
          else {
            const fresh = /** @type {any} */ (await newEntry(outbox, record.id, record.recorded_at));
            const note = notes[index] && { carried: notes[index] };
            await outbox.put({ ...fresh, sequence: entry?.sequence ?? fresh.sequence, ...note });
          }
          taken.push(record.id);
        }
        return taken;
      }, { strict: true });
    },
  };
}

/**
 * @param {import('./vault.js').Keys} keys
 * @param {string} id
 * @param {Carried} carried
 */
async function noteOf(keys, id, { tag, stuck, maker }) {
  return { tag, stuck, by: await seal(keys, `maker:${id}`, maker) };
}

/**
 * @param {import('./vault.js').Keys | null} keys  null while locked
 * @param {string} id
 * @param {any} note  as it lies in the outbox
 * @returns {Promise<Carried | null>}
 */
export async function fromNote(keys, id, note) {
  return note && { tag: note.tag, stuck: note.stuck, maker: keys ? await unseal(keys, `maker:${id}`, note.by) : '' };
}

/**
 * A record is corrected under its own id only where the clinic never took it, by the device that made it; both times are that
 * device's own.
 *
 * @param {LedgerRecord} theirs
 * @param {LedgerRecord} ours
 * @param {{carried?: Carried} | undefined} entry  of ours in the outbox
 */
function replaces(theirs, ours, entry) {
  const isAnother = theirs.digest !== ours.digest || theirs.recorded_at !== ours.recorded_at;
  if (!entry?.carried || !isAnother || theirs.device !== ours.device) return false;
  return Boolean(theirs.position) || Date.parse(theirs.recorded_at) >= Date.parse(ours.recorded_at);
}

/** @param {string} key  in hexadecimal */
export function hmacKey(key) {
  const bytes = /** @type {BufferSource} */ (unhex(key));
  return crypto.subtle.importKey('raw', bytes, { name: 'HMAC', hash: 'SHA-256' }, false, ['sign']);
}

/**
 * @param {CryptoKey} key
 * @param {LedgerRecord} record
 * @returns {Promise<string>}  HMAC-SHA-256 of the canonical JSON of the envelope, `supersedes` sorted; the body is in it by its digest
 */
export async function tagOf(key, { id, kind, clinic, patient, author, device, recorded_at, supersedes, digest }) {
  const said = { id, kind, clinic, patient, author, device, recorded_at, supersedes: [...supersedes].sort(), digest };
  return hex(await crypto.subtle.sign('HMAC', key, new TextEncoder().encode(canonical(said))));
}
