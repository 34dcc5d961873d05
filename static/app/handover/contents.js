/** What goes into a hand-over file, and what of one may stay on this device. Pure. */

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

/**
 * Theatre devices hold what cards are made of and nothing else: patients with a signed plan, that plan, what replaces it, its
 * signatures, and what takes one of these back (`clinic/sync/scope.py` is the clinic's own rule).
 *
 * @param {readonly LedgerRecord[]} records  all that would be on the device
 * @returns {Set<string>}  ids
 */
export function ofCards(records) {
  const signatures = records.filter(({ kind }) => kind === 'signature');
  const patients = new Set(signatures.map(({ patient }) => patient));
  const may = new Set(signatures.map(({ body }) => body.plan_id));
  const plans = records.filter(({ kind }) => kind === 'plan').sort((a, b) => (a.id < b.id ? -1 : 1));
  for (const plan of plans) if (plan.supersedes.some(id => may.has(id))) may.add(plan.id);
  for (const { id, kind, patient } of records) {
    if (kind === 'signature' || (kind === 'patient' && patients.has(patient))) may.add(id);
  }
  for (const { id, kind, body } of records) if (kind === 'retraction' && may.has(body.record_id)) may.add(id);
  return may;
}
