/** Operations with the visits that followed them, as the engine is asked about them. Pure: records in, facts out. */
import { practiceOf } from '../preparing/practice.js';
import { find, heads, history } from '../store/heads.js';
import { membersOf, rootOf } from '../store/joined.js';
import { operationsOf } from './operations.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {readonly LedgerRecord[]} Records */
/** @typedef {import('./operations.js').Operated} Operated */
/** @typedef {Operated & {visits: LedgerRecord[], endedOn: string | null}} Followed `endedOn`: the person was operated again, on whichever eye: an alignment is of both */

/** How long after a visit its warnings are looked for over all patients, and how long infection is asked for. */
const RECENT_DAYS = 60;
const FIRST_DAYS = 7;
const DAY_MS = 86_400_000;
/** As many as the engine looks at in one question; the latest operations come last. */
const MOST_WATCHED = 500;

/** Calendar days from one date to another. @param {string} from @param {string} to */
export const daysBetween = (from, to) => Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);

/**
 * The visits after an operation, whichever version of it they name, by their days.
 * @param {Records} records
 * @param {LedgerRecord} operation
 */
export function visitsOf(records, operation) {
  const versions = new Set(history(records, operation.id).map(({ id }) => id));
  return heads(records, 'follow_up', operation.patient)
    .filter(({ body }) => versions.has(body.operation_id))
    .sort((a, b) => (key(a) < key(b) ? -1 : 1));
}

/** @param {LedgerRecord} record */
const key = ({ body, id }) => `${body.seen_on} ${id}`;

/**
 * One operation for each signed plan, the newest record of it, in the order in which they were done.
 * @param {Records} records
 * @param {string} [patient] with whoever that person was entered as too; without one: of all patients
 * @returns {Followed[]}
 */
export function followedOf(records, patient) {
  const done = patient ? membersOf(records, patient).flatMap((member) => operationsOf(records, member)) : operationsOf(records);
  const bySignature = new Map(done.map((operated) => [operated.operation.body.signature_id, operated]));
  const all = [...bySignature.values()];
  /** @type {Map<string, Operated[]>} */
  const byPerson = new Map();
  for (const operated of all) {
    const person = rootOf(records, operated.operation.patient);
    byPerson.set(person, [...(byPerson.get(person) ?? []), operated]);
  }
  return all
    .map((operated) => {
      const { operation } = operated;
      const later = (byPerson.get(rootOf(records, operation.patient)) ?? [])
        .filter(({ operation: other }) => isAgain(records, operation, other))
        .map(({ operation: { body } }) => body.operated_on);
      return { ...operated, visits: visitsOf(records, operation), endedOn: later.sort()[0] ?? null };
    })
    .sort((a, b) => (a.operation.body.operated_on < b.operation.body.operated_on ? -1 : 1));
}

/**
 * Whether somebody went back to theatre: on a later day, or on the same day to a muscle that was worked on before; a second plan of
 * one sitting leaves that alone.
 * @param {Records} records
 * @param {LedgerRecord} operation
 * @param {LedgerRecord} other
 */
function isAgain(records, operation, other) {
  const [on, then] = [operation.body.operated_on, other.body.operated_on];
  return then > on || (then === on && isAfter(records, operation, other) && workedOn(other).some((muscle) => workedOn(operation).includes(muscle)));
}

/** By when it began, else by when it was first recorded. @param {Records} records @param {LedgerRecord} operation @param {LedgerRecord} other */
function isAfter(records, operation, other) {
  const [began, then] = [operation, other].map(({ body }) => Date.parse(body.started_at));
  if (began !== then && !Number.isNaN(began - then)) return then > began;
  const [recorded, later] = [operation, other].map((each) => (history(records, each.id)[0] ?? each).id);
  return later > recorded;
}

/** @param {LedgerRecord} operation @returns {string[]} */
const workedOn = ({ body }) => body.muscles.filter((/** @type {any} */ { done }) => done).map((/** @type {any} */ { eye, muscle }) => `${eye} ${muscle}`);

/**
 * The very one that the path names, in whichever version.
 * @param {Records} records
 * @param {string} id of an operation
 * @returns {Followed | undefined}
 */
export function followedBy(records, id) {
  const named = find(records, id);
  if (!named) return undefined;
  const versions = new Set(history(records, id).map((version) => version.id));
  const own = followedOf(records, named.patient).find(({ operation }) => versions.has(operation.id));
  return own ?? operationsOf(records, named.patient).filter(({ operation }) => versions.has(operation.id)).map((operated) => ({ ...operated, visits: visitsOf(records, operated.operation), endedOn: null }))[0];
}

/**
 * What the engine makes a course of; null where this device lacks the plan.
 * @param {Records} records
 * @param {Followed} followed
 * @param {string | null} today
 * @param {LedgerRecord[]} [visits] others than all
 */
export function careOf(records, { operation, adjustment, visits: all }, today, visits = all) {
  const signature = find(records, operation.body.signature_id);
  const plan = signature && find(records, signature.body.plan_id);
  if (!plan) return null;
  return {
    plan: plan.body,
    operation: operation.body,
    adjustment: adjustment?.body ?? null,
    attended: visits.map(({ body }) => ({ follow_up: body, examination: find(records, body.examination_id ?? '')?.body ?? null })),
    today,
  };
}

/**
 * Who is to be seen, by the visits that are usual in this clinic.
 * @param {Records} records
 * @param {Followed[]} followed
 * @param {string} today
 */
export const dueQuestion = (records, followed, today) => ({
  today,
  practice: practiceOf(records).current?.body ?? null,
  operations: followed.map(({ operation, visits, endedOn }) => ({ id: operation.id, operated_on: operation.body.operated_on, follow_ups: visits.map(({ body }) => body), ended_on: endedOn })),
});

/**
 * Of whom something may have to be said: the first days after an operation, or a visit not long ago.
 * @param {Records} records
 * @param {Followed[]} followed
 * @param {string} today
 * @returns {{operations: {id: string, care: object}[]}}
 */
export function watchQuestion(records, followed, today) {
  const watched = followed.filter(({ operation, visits, endedOn }) => {
    const last = visits.at(-1)?.body.seen_on ?? null;
    const isFirst = daysBetween(operation.body.operated_on, today) < FIRST_DAYS;
    return endedOn === null && (isFirst || (last !== null && daysBetween(last, today) <= RECENT_DAYS));
  });
  return {
    operations: watched.slice(-MOST_WATCHED).flatMap((each) => {
      const care = careOf(records, each, today);
      return care ? [{ id: each.operation.id, care }] : [];
    }),
  };
}

/**
 * Examinations of the day of a visit that no other visit claims, the newest first. Not one that a plan was made from, nor on the
 * day of the operation one from before its record: those are of before surgery.
 * @param {Records} records
 * @param {LedgerRecord} operation
 * @param {string} seenOn
 * @param {string} [visit] id of the visit that is corrected
 */
export function measuredOn(records, operation, seenOn, visit) {
  const others = heads(records, 'follow_up', operation.patient).filter(({ id }) => id !== visit);
  const plans = heads(records, 'plan', operation.patient);
  const claimed = new Set([...others, ...plans].flatMap(({ body }) => (body.examination_id ? history(records, body.examination_id).map(({ id }) => id) : [])));
  const [first] = history(records, operation.id);
  const isAfter = (/** @type {string} */ id) => seenOn > operation.body.operated_on || id > (first ?? operation).id;
  return heads(records, 'examination', operation.patient).filter(({ id, body }) => body.examined_on === seenOn && !claimed.has(id) && isAfter(id));
}

/** Whether the measurement of a visit was corrected or taken back since. @param {Records} records @param {LedgerRecord} visit */
export const isMeasuredAnew = (records, { body, patient }) =>
  Boolean(body.examination_id) && find(records, body.examination_id) !== undefined && !heads(records, 'examination', patient).some(({ id }) => id === body.examination_id);
