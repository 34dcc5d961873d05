/** The envelope around what a person entered: who, where, when, what it replaces, and its digest. */
import { digest } from './canonical.js';
import { uuid7 } from './uuid7.js';

/**
 * @typedef {object} LedgerRecord
 * @property {string} id  UUIDv7
 * @property {string} kind
 * @property {string} clinic
 * @property {string} patient  id of the first version of the patient's own record
 * @property {string} author  user name
 * @property {string} device
 * @property {string} recorded_at  device time with offset: to read, never to order by
 * @property {string[]} supersedes
 * @property {any} body  frozen
 * @property {string} digest
 * @property {number | null} [position]  the clinic's feed number; null until the clinic has it
 * @property {string | null} [received_at]
 * @property {string | null} [receipt]  the clinic's word that it took the record, good whoever sends it again
 */

/** Kinds whose first version stands by itself: its own id is its patient's. */
const OF_ITS_OWN = new Set(['patient', 'dose_table', 'practice', 'operating_list', 'check_item', 'notebook', 'own_results']);

/**
 * @param {object} facts
 * @param {string} [facts.id]  its own, where it was made elsewhere and is brought here
 * @param {string} facts.kind
 * @param {string} [facts.patient]  absent for a new patient's own record, and for a clinic's new dose table
 * @param {string[]} [facts.supersedes]
 * @param {unknown} facts.body
 * @param {{clinic: string, author: string, device: string}} facts.from
 * @param {Date} [facts.now]
 * @returns {Promise<LedgerRecord>}
 */
export async function envelope({ id = undefined, kind, patient, supersedes = [], body, from, now = new Date() }) {
  if (!patient && !OF_ITS_OWN.has(kind)) throw new TypeError(`a record of kind ${kind} needs its patient`);
  const own = id ?? uuid7(now.getTime());
  // Through JSON once: what is digested here is what is stored and sent, whatever the form held.
  const said = JSON.parse(JSON.stringify(body));
  return {
    id: own,
    kind,
    clinic: from.clinic,
    patient: patient ?? own,
    author: from.author,
    device: from.device,
    recorded_at: localTime(now),
    supersedes: [...supersedes],
    body: frozen(said),
    digest: await digest(said),
  };
}

/**
 * @param {Date} when
 * @returns {string}  ISO 8601 to the second with the device's offset, e.g. `2026-11-25T09:30:00+01:00`
 */
export function localTime(when) {
  const offset_min = -when.getTimezoneOffset();
  const local = new Date(when.getTime() + offset_min * 60_000).toISOString().slice(0, 19);
  const two = (/** @type {number} */ n) => String(Math.trunc(n)).padStart(2, '0');
  const sign = offset_min < 0 ? '-' : '+';
  return `${local}${sign}${two(Math.abs(offset_min) / 60)}:${two(Math.abs(offset_min) % 60)}`;
}

/**
 * @template T
 * @param {T} value
 * @returns {T}  the same value, frozen to its depth: nothing of a record changes after it is made
 */
export function frozen(value) {
  if (value && typeof value === 'object' && !Object.isFrozen(value)) {
    Object.values(value).forEach(frozen);
    Object.freeze(value);
  }
  return value;
}
