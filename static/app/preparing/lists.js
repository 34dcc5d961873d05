/** A day's list on this device: its current version, what is held of each entry, and its order. Pure: records in, facts out. */
import { isVoid, otherEntries, patientNow, presentIn, signatureOf, standingOf } from '../planning/standing.js';
import { find, heads, things } from '../store/heads.js';
import { setUpsOf } from './set-ups.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {readonly LedgerRecord[]} Records */
/** @typedef {{patient_id: string, plan_id: string, duration_min: number, note: string}} Entry */
/** @typedef {{schema: 1, on: string, team: string, place: string, starts_at: string, entries: Entry[]}} OperatingList */

/**
 * The clinic's lists, by day and then by team; of two versions made apart the newest is shown.
 *
 * @param {Records} records
 */
export const listsOf = (records) =>
  things(records, 'operating_list')
    .map(({ heads: versions, conflict }) => ({ id: versions[0].patient, current: versions[0], versions, conflict }))
    .sort((one, other) => (keyOf(one.current) < keyOf(other.current) ? -1 : 1));

/** @param {Records} records @param {string} id of the first version */
export const listOf = (records, id) => listsOf(records).find((list) => list.id === id);

/** @param {LedgerRecord} record */
const keyOf = ({ body, id }) => `${body.on} ${body.starts_at} ${body.team} ${id}`;

/**
 * The records of one entry as the engine takes them, or null where this device lacks the plan or its patient.
 *
 * @param {Records} records
 * @param {Entry} entry
 */
export function heldOf(records, { plan_id }) {
  const plan = find(records, plan_id);
  const patient = plan && find(records, plan.body.patient_id);
  if (!plan || !patient) return null;
  const signature = signatureOf(records, plan) ?? null;
  const standing = standingOf(records, plan, signature ?? undefined);
  const present = { now: patientNow(records, { patient }), others: otherEntries(records, { patient }) };
  return { plan, patient, ...present, signature, setUp: setUpsOf(records, plan)[0] ?? null, standing: standing.retraction ? 'taken back' : isVoid(standing) ? 'replaced' : 'current' };
}

/**
 * What the engine makes the list of.
 *
 * @param {Records} records
 * @param {OperatingList} list
 * @param {LedgerRecord | null} practice
 */
export const listQuestion = (records, list, practice) => ({
  list,
  held: list.entries.map((entry) => {
    const held = heldOf(records, entry);
    return held && { patient: held.patient.body, plan: held.plan.body, signature: held.signature?.body ?? null, set_up: held.setUp?.body ?? null, standing: held.standing, ...presentIn(held) };
  }),
  practice: practice?.body ?? null,
});

/**
 * What a list follows from on this device, as one text: another one where a plan, a patient, a signature or a set-up is another.
 *
 * @param {Records} records
 * @param {LedgerRecord} list
 */
export const stateOf = (records, list) =>
  [list.id, ...(list.body.entries ?? []).map((/** @type {Entry} */ entry) => {
    const held = heldOf(records, entry);
    return held ? [held.patient, held.plan, held.now, ...held.others, held.signature, held.setUp].map((record) => record?.id ?? 'none').concat(held.standing).join(' ') : 'nothing held';
  })].join(', ');

/**
 * Plans that can be put on a list, the signed ones first, each with its patient's newest details.
 *
 * @param {Records} records
 */
export function candidates(records) {
  return heads(records, 'plan')
    .map((plan) => ({ plan, patient: heads(records, 'patient', plan.patient)[0], signature: signatureOf(records, plan) }))
    .filter(({ patient }) => patient !== undefined)
    .sort((one, other) => Number(!one.signature) - Number(!other.signature) || one.patient.body.full_name.localeCompare(other.patient.body.full_name));
}

/**
 * The entries with one of them a place earlier (-1) or later (+1); at the ends nothing moves.
 *
 * @template T
 * @param {T[]} entries
 * @param {number} index
 * @param {-1 | 1} by
 */
export function moved(entries, index, by) {
  const to = index + by;
  if (to < 0 || to >= entries.length) return entries;
  const turned = [...entries];
  [turned[index], turned[to]] = [turned[to], turned[index]];
  return turned;
}

/**
 * A list with the patients' names where its entries have ids, to be read side by side with another version.
 *
 * @param {Records} records
 * @param {any} body
 */
export const named = (records, body) => ({
  ...body,
  entries: (body.entries ?? []).map((/** @type {Entry} */ entry) => ({ ...entry, plan_id: heads(records, 'patient', entry.patient_id)[0]?.body.full_name ?? 'not on this device' })),
});
