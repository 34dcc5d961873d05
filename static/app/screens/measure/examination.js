/** An examination in the making, and the record body that is made of it. */

import { isRead } from './cells.js';

/** @typedef {import('../../words/reading.js').Reading} Reading */
/** @typedef {{eye: string, muscle: string, grade: number}} Version */
/** @typedef {{eye: string | null, muscle: string | null, operation: string | null, mm: number | null, year: number | null}} PastOperation */
/**
 * @typedef {object} Draft
 * @property {string} examined_on
 * @property {Reading[]} readings
 * @property {string | null} fixing_eye
 * @property {string | null} acuity_right
 * @property {string | null} acuity_left
 * @property {Version[]} versions
 * @property {PastOperation[]} previous_operations
 * @property {string} note
 *
 * A corrected examination may hold more than this screen shows; that is carried along untouched.
 */

/**
 * @param {string} today YYYY-MM-DD
 * @returns {Draft}
 */
export const emptyDraft = (today) => ({
  examined_on: today,
  readings: [],
  fixing_eye: null,
  acuity_right: null,
  acuity_left: null,
  versions: [],
  previous_operations: [],
  note: '',
});

/** @type {PastOperation} */
export const EMPTY_OPERATION = { eye: null, muscle: null, operation: null, mm: null, year: null };

/** The draft that shows a saved examination. @param {Record<string, any>} body @returns {Draft} */
export function draftFrom(body) {
  const { schema: _, ...fields } = body;
  const draft = { ...emptyDraft(body.examined_on), ...fields };
  const operations = /** @type {PastOperation[]} */ (draft.previous_operations);
  return { ...draft, previous_operations: operations.map((operation) => ({ ...EMPTY_OPERATION, ...operation })) };
}

/**
 * The body of an `examination` record. What was not said is left out, an unfinished earlier operation with it
 * ({@link lacking} tells first).
 * @param {Draft} draft
 */
export function bodyOf(draft) {
  return {
    ...said(draft),
    schema: 1,
    readings: draft.readings.filter(isRead).map(said),
    versions: draft.versions.map(({ eye, muscle, grade }) => ({ eye, muscle, grade })),
    previous_operations: draft.previous_operations.filter(isComplete).map(said),
    note: draft.note.trim(),
  };
}

/**
 * What still keeps the draft from being saved, as faults with their field.
 * @param {Draft} draft
 */
export function lacking(draft) {
  const faults = [];
  if (!draft.readings.some((reading) => reading.gaze === 'primary' && reading.range === 'distance' && isRead(reading))) {
    faults.push({
      code: 'needs_primary_distance',
      field: 'readings',
      text: 'The primary position at distance has no reading yet.',
      allowed: 'One reading there; everything else can wait.',
    });
  }
  draft.previous_operations.forEach((operation, index) => {
    if (isComplete(operation)) return;
    faults.push({
      code: 'unfinished_operation',
      field: `previous_operations.${index}`,
      text: `Earlier operation ${index + 1} is not complete.`,
      allowed: 'Eye, muscle and what was done (unknown is an answer), or take it out.',
    });
  });
  return faults;
}

/** @param {PastOperation} operation */
const isComplete = ({ eye, muscle, operation }) => Boolean(eye && muscle && operation);

/**
 * Only the fields that hold something.
 * @param {Record<string, any>} fields
 */
const said = (fields) => Object.fromEntries(Object.entries(fields).filter(([, value]) => value != null));
