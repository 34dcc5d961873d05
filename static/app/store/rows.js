/** Records as they lie in the database: sealed one by one, with only id, position, time of arrival and receipt in clear. */
import { frozen } from './envelope.js';
import { seal, unseal } from './vault.js';

/** @typedef {import('./envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('./vault.js').Keys} Keys */
/** @typedef {{id: string, position: number | null, receivedAt: string | null, receipt?: string | null, iv: Uint8Array, sealed: ArrayBuffer}} Row */

/**
 * @param {Keys} keys
 * @param {LedgerRecord} record
 * @returns {Promise<Row>}
 */
export async function toRow(keys, { position = null, received_at = null, receipt = null, ...record }) {
  return { id: record.id, position, receivedAt: received_at, receipt, ...(await seal(keys, `record:${record.id}`, record)) };
}

/**
 * @param {Keys} keys
 * @param {Row} row
 * @returns {Promise<LedgerRecord>}
 * @throws {import('../fault.js').Fault} seal_broken
 */
export async function fromRow(keys, row) {
  const record = await unseal(keys, `record:${row.id}`, row);
  return frozen({ ...record, position: row.position, received_at: row.receivedAt, receipt: row.receipt ?? null });
}

/**
 * All that can be opened, and the ids of those that cannot: one damaged row must not hide the others.
 *
 * @param {Keys} keys
 * @param {Row[]} rows
 * @returns {Promise<{opened: LedgerRecord[], broken: string[]}>}
 */
export async function fromRows(keys, rows) {
  /** @type {string[]} */
  const broken = [];
  const opened = await Promise.all(rows.map(row => fromRow(keys, row).catch(() => void broken.push(row.id))));
  return { opened: opened.filter(record => record !== undefined), broken };
}
