/** Makes a hand-over file of what is on this device. Works without a network. */
import { localTime } from '../store/envelope.js';
import { Fault } from '../fault.js';
import { inPages, toGive } from './contents.js';
import { ROUNDS, writeFile } from './file.js';

/** @typedef {import('../store/ledger.js').Ledger} Ledger */
/** @typedef {{username: string, full_name: string, role: string, device: string, device_name: string}} Giver */

/**
 * @param {object} what
 * @param {Ledger} what.ledger  open
 * @param {Giver} what.from
 * @param {import('./contents.js').Choice | {record: string}} what.choice
 * @param {string} what.passphrase
 * @param {Date} [what.now]
 * @param {number} [what.rounds]
 * @returns {Promise<{bytes: Uint8Array, name: string, count: number}>}
 * @throws {Fault} nothing_to_give, passphrase_short
 */
export async function makeHandOver({ ledger, from, choice, passphrase, now = new Date(), rounds = ROUNDS }) {
  const records = toGive(ledger.records.get(), ledger.outbox.get(), choice);
  if (!records.length) throw new Fault('nothing_to_give', 'There is nothing here to hand over.');
  const entries = new Map(ledger.outbox.get().map(entry => [entry.id, entry]));
  const own = records.filter(({ id, author, device }) => entries.has(id) && author === ledger.author && device === ledger.device);
  const tags = await ledger.tags(own);
  const sealed = new Map(own.map(({ id }, index) => [id, tags[index]]));
  const items = records.map(record => {
    const entry = entries.get(record.id);
    return {
      record,
      sent: !entry,
      refused: entry?.state === 'attention' || entry?.carried?.stuck === true,
      tag: sealed.get(record.id) ?? entry?.carried?.tag ?? '',
      maker: record.author === from.username ? from.full_name : (entry?.carried?.maker ?? ''),
    };
  });
  const made_at = localTime(now);
  const pages = [{ from, count: items.length }, ...inPages(items).map(page => ({ items: page }))];
  const bytes = await writeFile({ clinic: ledger.clinic, made_at, pages, passphrase, rounds });
  return { bytes, name: fileName(made_at), count: items.length };
}

/**
 * @param {string} made_at
 * @returns {string}  `hand-over-2026-11-25-0930.ppcarry`: nothing of a patient, nor of who made it
 */
function fileName(made_at) {
  return `hand-over-${made_at.slice(0, 10)}-${made_at.slice(11, 16).replace(':', '')}.ppcarry`;
}
