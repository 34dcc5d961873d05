/**
 * Takes what is in a hand-over file: all of it that this device may hold and has not got, in one transaction, or nothing. The same
 * file again, or files in any order, change nothing that is here already. Works without a network.
 */
import { digest } from '../store/canonical.js';
import { frozen } from '../store/envelope.js';
import { Fault } from '../fault.js';
import { ofCards, toHold } from './contents.js';
import { readFile, readHeader, ROUNDS } from './file.js';

/** @typedef {import('../store/ledger.js').Ledger} Ledger */
/** @typedef {import('./giving.js').Giver} Giver */
/** @typedef {{from: Giver, made_at: string, count: number, taken: number, here: number, notHeld: number, carried: number, stuck: number}} Taken */

const FIELDS = ['id', 'kind', 'clinic', 'patient', 'author', 'device', 'recorded_at', 'digest'];

/**
 * @param {Uint8Array} bytes
 * @param {string} clinic  of this device
 * @throws {Fault} file_foreign, file_damaged, other_clinic
 */
export function checkHandOver(bytes, clinic) {
  if (readHeader(bytes).clinic !== clinic) {
    throw new Fault('other_clinic', 'This file belongs to another clinic. Nothing was taken from it.');
  }
}

/**
 * @param {object} what
 * @param {Ledger} what.ledger  open
 * @param {string} what.role  of the person here
 * @param {Uint8Array} what.bytes
 * @param {string} what.passphrase
 * @param {number} [what.leastRounds]
 * @returns {Promise<Taken>}
 * @throws {Fault} file_foreign, file_damaged, file_weak, wrong_passphrase, other_clinic, storage_full, ...
 */
export async function takeHandOver({ ledger, role, bytes, passphrase, leastRounds = ROUNDS }) {
  checkHandOver(bytes, ledger.clinic);
  const { header, pages } = await readFile(bytes, passphrase, { leastRounds });
  const [{ from, count } = /** @type {any} */ ({}), ...rest] = pages;
  /** @type {import('./contents.js').Page[]} */
  const items = rest.flatMap(page => (Array.isArray(page?.items) ? page.items : []));
  const areWhole = await Promise.all(items.map(item => isWhole(item, ledger.clinic)));
  if (!from || items.length !== count || !areWhole.every(Boolean)) {
    throw new Fault('file_damaged', 'This file holds what is no whole record. Nothing was taken from it.');
  }
  const mayHold = role === 'theatre' && from.role !== 'theatre' ? ofCards([...ledger.records.get(), ...items.map(({ record }) => record)]) : null;
  const held = items.filter(({ record }) => mayHold?.has(record.id) ?? true).map(item => toHold(item, ledger));
  const taken = new Set(await ledger.takeOver(held.map(item => ({ ...item, record: frozen(item.record) }))));
  const fresh = held.filter(({ record }) => taken.has(record.id));
  return {
    from,
    made_at: header.made_at,
    count,
    taken: fresh.length,
    here: held.length - fresh.length,
    notHeld: items.length - held.length,
    carried: fresh.filter(({ carried }) => carried && !carried.stuck).length,
    stuck: fresh.filter(({ carried }) => carried?.stuck).length,
  };
}

/**
 * @param {import('./contents.js').Page} item
 * @param {string} clinic
 */
async function isWhole(item, clinic) {
  const record = /** @type {any} */ (item?.record);
  if (!record || FIELDS.some(name => typeof record[name] !== 'string') || record.clinic !== clinic) return false;
  if (!Array.isArray(record.supersedes) || typeof item.tag !== 'string' || typeof item.maker !== 'string') return false;
  return (await digest(record.body)) === record.digest;
}
