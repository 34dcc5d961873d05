/** Where two or more versions of one body differ, in words, field by field. */
import { shortDateWords } from '../../parts/calendar/date.js';
import { EYE_WORDS, MUSCLE_WORDS, doneWords } from '../../words/anatomy.js';
import { cellWords, CORRECTION_WORDS, readingLines } from '../../words/reading.js';
import { unusualWords } from '../../words/taking.js';
import { FIELD_WORDS } from '../../words/field.js';
import { mmWords } from '../../words/figures.js';
import { operatedFacts } from './operated-facts.js';
import { preparedFacts } from './prepared-facts.js';

/**
 * @typedef {object} Difference
 * @property {string} field
 * @property {string} words the field in words
 * @property {string[]} values one for each version, in their order; `not entered` where it lacks
 *
 * @param {any[]} bodies
 * @returns {Difference[]}
 */
export function differences(bodies) {
  const flat = bodies.map(flattened);
  const words = new Map(flat.flatMap((facts) => [...facts].map(([field, fact]) => [field, fact.words])));
  return [...words]
    .map(([field, said]) => ({ field, words: said, values: flat.map((facts) => facts.get(field)?.value || 'not entered') }))
    .filter(({ values }) => new Set(values).size > 1);
}

/**
 * @param {any} body
 * @returns {Map<string, {words: string, value: string}>}
 */
function flattened(body) {
  /** @type {Map<string, {words: string, value: string}>} */
  const facts = new Map();
  const tell = (/** @type {string} */ field, /** @type {string} */ words, /** @type {string} */ value) => facts.set(field, { words, value });

  for (const [field, words] of Object.entries(FIELD_WORDS)) {
    if (body[field] != null) tell(field, words, field.endsWith('_on') ? shortDateWords(body[field]) : String(body[field]));
  }
  for (const reading of body.readings ?? []) {
    const { technique, ...taken } = reading;
    const where = [cellWords(reading), CORRECTION_WORDS[reading.correction], ...unusualWords(taken)].join(', ');
    tell(`reading ${where}`, where, [...readingLines(reading).map(({ text }) => text), ...unusualWords({ technique })].join(', '));
  }
  for (const { eye, muscle, grade } of body.versions ?? []) {
    const where = `${EYE_WORDS[eye]}, ${MUSCLE_WORDS[muscle]}`;
    tell(`version ${where}`, `Version, ${where}`, grade > 0 ? `+${grade}` : String(grade));
  }
  for (const { eye, muscle, grade } of body.ductions ?? []) {
    const where = `${EYE_WORDS[eye]}, ${MUSCLE_WORDS[muscle]}`;
    tell(`duction ${where}`, `Duction, ${where}`, String(grade));
  }
  for (const { eye, muscle, result } of body.forced_ductions ?? []) {
    const where = `${EYE_WORDS[eye]}, ${MUSCLE_WORDS[muscle]}`;
    tell(`forced ${where}`, `Forced duction, ${where}`, result);
  }
  for (const { diagnosis, eye } of body.diagnoses ?? []) tell(`diagnosis ${diagnosis} ${eye ?? ''}`, diagnosis, eye ? EYE_WORDS[eye] : 'known');
  for (const { breaker, presence } of body.conditions ?? []) tell(`condition ${breaker}`, breaker, presence);
  for (const [part, value] of Object.entries(body.head_posture ?? {})) if (value != null) tell(`posture ${part}`, `Head posture, ${part.replace('_deg', ', degrees')}`, String(value));
  for (const [index, past] of (body.previous_operations ?? []).entries()) {
    const what = [past.operation, past.mm != null && mmWords(past.mm), past.year].filter(Boolean).join(', ');
    tell(`past ${index}`, `Earlier operation ${index + 1}`, `${EYE_WORDS[past.eye]}, ${MUSCLE_WORDS[past.muscle]}: ${what}`);
  }
  for (const dose of body.option?.doses ?? []) {
    const where = `${EYE_WORDS[dose.eye]}, ${MUSCLE_WORDS[dose.muscle]}`;
    tell(`dose ${where}`, where, [doneWords(dose), dose.mm === null ? '' : mmWords(dose.mm)].filter(Boolean).join(' '));
  }
  if (body.table) tell('table', 'Table', body.table.name);
  for (const { field, words, value } of [...preparedFacts(body), ...operatedFacts(body)]) tell(field, words, value);
  return facts;
}
