/** The patient form's value: what is typed, to and from the body of a patient record, and what is plainly missing. */
import { dateParts, dateWords } from '../../parts/calendar/date.js';

/** @typedef {{full_name: string, born_on: string, hospital_number: string, sex: string, allergies: string, note: string, latex: string, anticoagulants: string, malignant_hyperthermia_family: string}} Typed */
/** @typedef {{code: string, text: string, field: string, value: string, allowed: string}} FieldFault */

/** @type {Typed} */
export const EMPTY = Object.freeze({ full_name: '', born_on: '', hospital_number: '', sex: 'unknown', allergies: '', note: '', latex: 'unknown', anticoagulants: '', malignant_hyperthermia_family: 'unknown' });

export const FIELDS = /** @type {(keyof Typed)[]} */ (Object.keys(EMPTY));

/**
 * @param {Partial<Typed> | undefined} body of a record, or an earlier draft
 * @returns {Typed}
 */
export function typedFrom(body) {
  return /** @type {Typed} */ (Object.fromEntries(FIELDS.map((field) => [field, body?.[field] ?? EMPTY[field]])));
}

/**
 * @param {Typed} typed
 * @returns {Typed & {schema: number}} without surrounding white space
 */
export function bodyFrom(typed) {
  const trimmed = Object.fromEntries(FIELDS.map((field) => [field, typed[field].trim()]));
  return { schema: 1, .../** @type {Typed} */ (trimmed) };
}

/** @param {Typed} a @param {Typed} b */
export function same(a, b) {
  return FIELDS.every((field) => a[field] === b[field]);
}

/**
 * What can be told without the engine, at once: a required entry that is empty, and a day that no calendar has. All other limits are
 * the engine's.
 *
 * @param {Typed} typed
 * @param {string} today `YYYY-MM-DD`
 * @returns {FieldFault[]}
 */
export function missing(typed, today) {
  /** @type {FieldFault[]} */
  const faults = [];
  const fault = (/** @type {keyof Typed} */ field, /** @type {string} */ code, /** @type {string} */ text, /** @type {string} */ allowed) =>
    faults.push({ field, code, text, value: typed[field], allowed });

  if (!typed.full_name.trim()) fault('full_name', 'empty', 'The full name is missing.', '1 to 120 characters');
  if (!typed.born_on) fault('born_on', 'empty', 'The birth date is missing.', `a day from 1 January 1900 to ${dateWords(today)}`);
  else if (!dateParts(typed.born_on)) fault('born_on', 'no_such_day', 'There is no such day.', 'day 1 to 31, month 1 to 12, year with four digits');
  else if (typed.born_on > today) fault('born_on', 'in_future', 'The birth date lies in the future.', `a day up to ${dateWords(today)}`);
  if (!typed.hospital_number.trim()) fault('hospital_number', 'empty', 'The hospital number is missing.', '1 to 40 characters');
  return faults;
}
