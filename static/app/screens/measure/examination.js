/** An examination in the making, and the record body that is made of it. */

import { cellWords } from '../../words/reading.js';
import { isRead } from './cells.js';
import { lacksSecond } from './taking.js';

/** @typedef {import('../../words/reading.js').Reading} Reading */
/** @typedef {{eye: string, muscle: string, grade: number}} Version */
/** @typedef {{eye: string | null, muscle: string | null, operation: string | null, mm: number | null, year: number | null}} PastOperation */
/** @typedef {{turn?: string | null, turn_deg?: number | null, tilt?: string | null, tilt_deg?: number | null, chin?: string | null, chin_deg?: number | null}} HeadPosture */
/** @typedef {{diagnosis: string, eye?: string | null}} Diagnosed */
/** @typedef {{breaker: string, presence: string}} Validity */
/**
 * @typedef {object} Draft
 * @property {string} examined_on
 * @property {Reading[]} readings
 * @property {string | null} fixing_eye
 * @property {string | null} constancy
 * @property {string | null} acuity_right
 * @property {string | null} acuity_left
 * @property {Version[]} versions
 * @property {PastOperation[]} previous_operations
 * @property {string} note
 * @property {number | null} spectacles_right_d
 * @property {number | null} spectacles_left_d
 * @property {number | null} pupil_distance_mm
 * @property {number | null} axial_length_right_mm
 * @property {number | null} axial_length_left_mm
 * @property {number | null} excyclotorsion_right_deg
 * @property {number | null} excyclotorsion_left_deg
 * @property {number | null} excyclotorsion_down_deg
 * @property {number | null} dvd_right_pd
 * @property {number | null} dvd_left_pd
 * @property {HeadPosture | null} head_posture
 * @property {import('../../parts/duction-pad/ductions.js').Duction[]} ductions
 * @property {import('../../parts/duction-pad/ductions.js').ForcedDuction[]} forced_ductions
 * @property {Validity[]} conditions
 * @property {Diagnosed[]} diagnoses
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
  constancy: null,
  acuity_right: null,
  acuity_left: null,
  versions: [],
  previous_operations: [],
  note: '',
  spectacles_right_d: null,
  spectacles_left_d: null,
  pupil_distance_mm: null,
  axial_length_right_mm: null,
  axial_length_left_mm: null,
  excyclotorsion_right_deg: null,
  excyclotorsion_left_deg: null,
  excyclotorsion_down_deg: null,
  dvd_right_pd: null,
  dvd_left_pd: null,
  head_posture: null,
  ductions: [],
  forced_ductions: [],
  conditions: [],
  diagnoses: [],
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
    ...told(draft),
    schema: 1,
    readings: draft.readings.filter(isRead).map(readingBody),
    versions: draft.versions.map(({ eye, muscle, grade }) => ({ eye, muscle, grade })),
    previous_operations: draft.previous_operations.filter(isComplete).map(said),
    note: draft.note.trim(),
  };
}

/** @param {Reading} reading */
const readingBody = (reading) => said({ ...reading, technique: reading.technique ? said(reading.technique) : null });

/**
 * The fields that hold something, without lists and parts that hold nothing.
 * @param {Draft} draft
 */
function told(draft) {
  const { head_posture: posture, diagnoses, ...others } = said(draft);
  const fields = Object.entries(others).filter(([, value]) => !Array.isArray(value) || value.length > 0);
  return {
    ...Object.fromEntries(fields),
    ...(posture && (posture.turn || posture.tilt || posture.chin) ? { head_posture: said(posture) } : {}),
    ...(diagnoses.length > 0 ? { diagnoses: diagnoses.map(said) } : {}),
  };
}

/**
 * What still keeps the draft from being saved, as faults with their field.
 * @param {Draft} draft
 */
export function lacking(draft) {
  const faults = [];
  if (!draft.readings.some(isMain)) {
    faults.push({
      code: 'needs_primary_distance',
      field: 'readings',
      text: 'The primary position at distance has no reading yet.',
      allowed: 'One reading there; everything else can wait.',
    });
  }
  draft.readings.forEach((reading, index) => {
    if (!lacksSecond(reading)) return;
    faults.push({
      code: 'second_prism_missing',
      field: `readings.${index}`,
      text: `${cellWords(reading)}: the second prism has no figure.`,
      allowed: 'Its label under How it was measured, or one prism.',
    });
  });
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

/** @param {Reading} reading */
const isMain = (reading) => reading.gaze === 'primary' && reading.range === 'distance' && (reading.condition ?? 'plain') === 'plain' && isRead(reading);

/** @param {PastOperation} operation */
const isComplete = ({ eye, muscle, operation }) => Boolean(eye && muscle && operation);

/**
 * Only the fields that hold something.
 * @param {Record<string, any>} fields
 */
const said = (fields) => Object.fromEntries(Object.entries(fields).filter(([, value]) => value != null));
