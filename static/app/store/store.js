/**
 * The door of the store: the only folder that touches IndexedDB. Everything of a patient is sealed there (`vault.js`).
 *
 *     saveRecord(kind, {patient, supersedes, body, draft})   resolves with the record once it is stored on this phone;
 *                                                            `draft` names the draft that is saved with it and so goes
 *     records            observable: all records of this ledger, opened; [] while locked
 *     outbox             observable: what has not reached the clinic, [{id, state, since, code, text, field}]
 *     stateOf(id)        'waiting', 'attention' or 'sent'
 *     retry(id)          sends again what needed attention
 *     broken             observable: ids of rows that were damaged and cannot be read
 *     drafts             what was typed and not yet saved: get(name), keep(name, value), drop(name), names(), flush()
 *     kept               the same for what was made of records and can be made again: it is no unsent work
 *
 * Inside: `db.js` the connection, `schema.js` the stores, `entrance.js` the ways in, `keeper.js` the secret, `tries.js` its count,
 * `ledger.js` one person's records in one clinic, `exchange.js` what sync does with its rows, `words.js` what the clinic said of them,
 * `entries.js` the rows of what waits, `heads.js` and `outbox.js` pure decisions, `device.js` this phone, `protection.js` what the
 * browser promises. `openStore`, `closeStore` and `ledger` are for `session/` and `sync/`.
 */
import { Fault } from '../fault.js';
import { observable } from '../observable.js';
import { database } from './db.js';
import { openDevice } from './device.js';
import { openLedger } from './ledger.js';
import { askProtection, measureStorage, noteStorage } from './protection.js';
import { forgetTries } from './tries.js';

/** @typedef {import('./envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('./ledger.js').Ledger} Ledger */
/** @typedef {import('./outbox.js').Entry} Entry */

/** @type {import('../observable.js').Observable<Ledger | null>} */
export const ledger = observable(/** @type {Ledger | null} */ (null));

/** @type {import('../observable.js').Observable<readonly LedgerRecord[]>} */
export const records = observable(/** @type {readonly LedgerRecord[]} */ ([]));

/** @type {import('../observable.js').Observable<readonly Entry[]>} */
export const outbox = observable(/** @type {readonly Entry[]} */ ([]));

/** @type {import('../observable.js').Observable<readonly string[]>} */
export const broken = observable(/** @type {readonly string[]} */ ([]));

/** @type {Record<import('./db.js').Notice, string>} */
const NOTICES = {
  blocked: 'Another tab with an older version of this app is open. Close it so that this one can go on.',
  outdated: 'A newer version of this app is open in another tab. Load this page again.',
  lost: "The connection to this phone's storage was lost. Load the app again; what was saved is still here.",
};

const notify = (/** @type {import('./db.js').Notice} */ notice) =>
  noteStorage({ problem: { code: `storage_${notice}`, text: NOTICES[notice] } });

export const device = openDevice({ notify });

/** @type {(() => void)[]} */
let mirrors = [];

/**
 * @param {{author: string, clinic: string, device: string}} who
 * @returns {Promise<Ledger>}  still locked
 */
export async function openStore(who) {
  closeStore();
  const opened = openLedger(who, { notify, onProblem: noteProblem });
  mirrors = [mirror(opened.records, records), mirror(opened.outbox, outbox), mirror(opened.broken, broken)];
  ledger.set(opened);
  await opened.readOutbox();
  return opened;
}

/**
 * Removes every ledger of a person on this phone, in whichever clinic, unopened.
 *
 * @param {string} author
 */
export async function eraseLedgersOf(author) {
  const found = (await indexedDB.databases?.()) ?? [];
  const names = found.map(({ name }) => name ?? '').filter(name => name.startsWith('ledger/') && name.split('/')[2] === author);
  await Promise.all(names.map(name => database(name, [], { notify }).erase()));
  names.forEach(forgetTries);
}

export function closeStore() {
  mirrors.forEach(stop => stop());
  mirrors = [];
  ledger.get()?.close();
  ledger.set(null);
  records.set([]);
  outbox.set([]);
  broken.set([]);
}

/**
 * @param {string} kind
 * @param {import('./ledger.js').Saving} saving
 * @returns {Promise<LedgerRecord>}
 * @throws {Fault}
 */
export async function saveRecord(kind, saving) {
  try {
    const record = await current().save(kind, saving);
    noteStorage({ problem: null });
    askProtection(device).then(measureStorage).catch(noteProblem);
    return record;
  } catch (error) {
    noteProblem(error);
    throw error;
  }
}

/**
 * @param {string} id
 * @returns {'waiting' | 'attention' | 'sent'}
 */
export function stateOf(id) {
  return outbox.get().find(entry => entry.id === id)?.state ?? 'sent';
}

/** @param {string} id */
export const retry = id => current().retry(id);

export const drafts = shelf('drafts');
export const kept = shelf('kept');

/** @param {'drafts' | 'kept'} name  of the shelf, in whichever ledger is open */
function shelf(name) {
  return {
    /** @type {(key: string) => any} */
    get: key => ledger.get()?.[name].get(key),
    /** @type {(key: string, value: unknown) => void} */
    keep: (key, value) => current()[name].keep(key, value),
    /** @type {(key: string) => void} */
    drop: key => current()[name].drop(key),
    names: () => ledger.get()?.[name].names() ?? [],
    flush: async () => ledger.get()?.[name].flush(),
  };
}

function current() {
  const opened = ledger.get();
  if (!opened?.isOpen()) throw new Fault('locked', 'Unlock first.');
  return opened;
}

/** @param {any} error */
function noteProblem(error) {
  // `storage_closed` is the end of something that was under way when the person left.
  if (error instanceof Fault && error.code.startsWith('storage_') && error.code !== 'storage_closed') {
    noteStorage({ problem: { code: error.code, text: error.text } });
  }
}

/**
 * @template T
 * @param {import('../observable.js').Observable<T>} source
 * @param {import('../observable.js').Observable<T>} target
 */
function mirror(source, target) {
  target.set(source.get());
  return source.subscribe(target.set);
}
