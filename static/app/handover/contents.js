/** What goes into a hand-over file, and what of one may stay on this device. Pure. */
import { joinsOf, membersOf } from '../store/joined.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('../store/outbox.js').Entry} Entry */
/** @typedef {import('../store/carrying.js').Item} Item */
/** @typedef {{record: LedgerRecord, sent: boolean, refused: boolean, tag: string, maker: string}} Page  one record in a file */
/** @typedef {'unsent' | 'all'} Choice */

/** Records of one page of the file: a page is read as a whole. */
const PAGE_LETTERS = 250_000;

/**
 * @param {readonly LedgerRecord[]} records
 * @param {readonly Entry[]} entries  of the outbox
 * @param {Choice | {record: string}} choice  `unsent`: what the clinic has not got; `record`: one. Both with all that is
 *   known of the same patients, for nobody can read an examination without its patient
 * @returns {LedgerRecord[]}  in the order in which they were made, so that each comes after what it speaks of
 */
export function toGive(records, entries, choice) {
  const wanted = typeof choice === 'object' ? new Set([choice.record]) : new Set(entries.map(({ id }) => id));
  const patients = new Set(records.filter(({ id }) => wanted.has(id)).map(({ patient }) => patient));
  const given = choice === 'all' ? [...records] : records.filter(({ patient }) => patients.has(patient));
  return given.sort((a, b) => (a.id < b.id ? -1 : 1));
}

/**
 * @param {readonly Page[]} items
 * @returns {Page[][]}
 */
export function inPages(items) {
  /** @type {Page[][]} */
  const pages = [];
  let letters = Infinity;
  for (const item of items) {
    const size = JSON.stringify(item).length;
    if (letters + size > PAGE_LETTERS) {
      pages.push([]);
      letters = 0;
    }
    pages[pages.length - 1].push(item);
    letters += size;
  }
  return pages;
}

/**
 * How this device holds what another gave.
 *
 * @param {Page} page
 * @param {{author: string, device: string}} here
 * @returns {Item}
 */
export function toHold({ record, sent, refused, tag, maker }, { author, device }) {
  if (sent) return { record, sent, carried: null };
  const bare = { ...record, position: null, received_at: null };
  // One's own record, made on another of one's devices, needs no seal: the account may send it from any of them.
  const isOwn = record.author === author;
  if (isOwn && record.device === device) return { record: bare, sent, carried: null };
  return { record: bare, sent, carried: { tag, stuck: refused || !(tag || isOwn), maker } };
}

/** Kinds that every theatre device holds. */
export const FOR_ALL_THEATRE = ['check_item', 'operating_list', 'practice'];
/** Kinds that follow the one record which a field of their body names. */
export const FOLLOWING = {
  signature: 'plan_id',
  set_up: 'plan_id',
  theatre_check: 'signature_id',
  operation: 'signature_id',
  adjustment: 'operation_id',
  retraction: 'record_id',
};

/**
 * Theatre devices hold what cards are made of, what is about these, and what is for all of theatre (`clinic/sync/scope.py` is the
 * clinic's own rule): patients with a signed plan and whoever else that person was entered as, with the join; that plan and
 * what replaces it, its signatures and what follows them.
 *
 * @param {readonly LedgerRecord[]} records  all that would be on the device
 * @returns {Set<string>}  ids
 */
export function ofCards(records) {
  const inOrder = [...records].sort((a, b) => (a.id < b.id ? -1 : 1));
  const signatures = inOrder.filter(({ kind }) => kind === 'signature');
  const patients = new Set(signatures.flatMap(({ patient }) => membersOf(records, patient)));
  const joins = signatures.flatMap(({ patient }) => joinsOf(records, patient)).map(({ id }) => id);
  const may = new Set([...joins, ...signatures.map(({ body }) => body.plan_id)]);
  // In the order of their making, each comes after what it follows.
  for (const { id, kind, patient, supersedes, body } of inOrder) {
    const follows = body[FOLLOWING[/** @type {keyof typeof FOLLOWING} */ (kind)]];
    const isOpen =
      FOR_ALL_THEATRE.includes(kind) ||
      (kind === 'patient' && patients.has(patient)) ||
      (kind === 'plan' && supersedes.some(older => may.has(older))) ||
      may.has(follows);
    if (isOpen) may.add(id);
  }
  return may;
}
