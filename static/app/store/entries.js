/**
 * The rows of the outbox, an entry for each record that the clinic has not got: {id, sequence, state, since, ...}, as `schema.js` has it.
 * All of it happens in a transaction that others began.
 */

/** @typedef {import('./envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {{record: LedgerRecord, row: import('./rows.js').Row}} Sealed */
/**
 * A record just made, with its entry behind all others.
 *
 * @param {import('./db.js').Transaction} tx  on records and outbox
 * @param {Sealed} anew
 * @param {Sealed | null} inPlace  the same under the id of the refused record that it corrects, whose turn it takes: unless another
 *   tab has sent that one again meanwhile, for the clinic may have it by now
 * @returns {Promise<{record: LedgerRecord, entry: any}>}
 */
export async function addMade(tx, anew, inPlace) {
  const outbox = tx.objectStore('outbox');
  const refused = inPlace && (await outbox.get(inPlace.record.id));
  const { record, row } = inPlace && refused?.state === 'attention' ? inPlace : anew;
  await tx.objectStore('records').put(row);
  const fresh = /** @type {any} */ (await newEntry(outbox, record.id, record.recorded_at));
  const entry = { ...fresh, sequence: (await outbox.get(record.id))?.sequence ?? fresh.sequence };
  await outbox.put(entry);
  return { record, entry };
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
 * @param {any} outbox  the store
 * @returns {Promise<Map<string, any>>}  by id
 */
export async function entriesOf(outbox) {
  const rows = await outbox.getAll();
  return new Map(rows.map((/** @type {any} */ row) => [row.id, row]));
}
