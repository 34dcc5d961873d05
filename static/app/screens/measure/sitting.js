/**
 * The whole state of the measuring screen as one value: what was measured, where the surgeon looks, how readings are being
 * taken, which place is open and what is half typed. It is kept as the draft at every touch, so a killed app opens again
 * exactly here.
 */

import { entryFrom, figures, touched, unfinished } from '../../parts/number-pad/prism-entry.js';
import { readingAt, readingsIn, withReading, withTechnique } from './cells.js';
import { emptyDraft } from './examination.js';
import { USUAL_TAKING, techniqueOfNext, techniqueWith } from './taking.js';
import { firstUsual, nextUsual } from './usual-order.js';

/** @typedef {import('../../words/reading.js').Cell} Cell */
/** @typedef {import('../../words/taking.js').Technique} Technique */
/** @typedef {import('./examination.js').Draft} Draft */
/** @typedef {import('./taking.js').Taking} Taking */
/** @typedef {import('../../parts/number-pad/prism-entry.js').Entry} Entry */
/** @typedef {import('../../parts/number-pad/prism-entry.js').Touch} Touch */
/** @typedef {{draft: Draft, range: string, correction: string, taking: Taking, open: {cell: Cell, entry: Entry} | null}} Sitting */
/** @typedef {{range?: string, correction?: string, condition?: string, method?: string}} Conditions */

/**
 * @param {Draft} draft
 * @returns {Sitting}
 */
export function sittingOf(draft) {
  const [first] = draft.readings;
  return { draft, range: 'distance', correction: first?.correction ?? 'with', taking: { ...USUAL_TAKING, technique: first?.technique ?? null }, open: null };
}

/** @param {string} today @returns {Sitting} */
export const newSitting = (today) => sittingOf(emptyDraft(today));

/** A kept draft as this screen knows it now: what an older one did not hold is as usual. @param {any} kept @returns {Sitting} */
export const restored = (kept) => ({ ...kept, draft: { ...emptyDraft(kept.draft.examined_on), ...kept.draft }, taking: kept.taking ?? USUAL_TAKING });

/**
 * The same sitting turned to another range, correction, condition or method; an open pad follows.
 * @param {Sitting} sitting
 * @param {Conditions} conditions
 * @returns {Sitting}
 */
export function turned(sitting, conditions) {
  const { range = sitting.range, correction = sitting.correction, condition = sitting.taking.condition, method = sitting.taking.method } = conditions;
  const next = { ...sitting, range, correction, taking: { ...sitting.taking, condition, method } };
  if (!sitting.open) return next;
  const { repeat: _repeat, method: _method, ...place } = sitting.open.cell;
  return opened(next, { ...place, ...conditions });
}

/**
 * Opens a reading. Where the cell does not say by which method, it is the first reading of that place, or a new one by the
 * present method.
 * @param {Sitting} sitting
 * @param {Cell} cell
 * @returns {Sitting}
 */
export function opened(sitting, cell) {
  const { range, correction } = cell;
  const { readings } = sitting.draft;
  const condition = cell.condition ?? sitting.taking.condition;
  const present = { ...cell, condition, method: cell.method ?? sitting.taking.method };
  const first = cell.method ? undefined : readingsIn(readings, present)[0];
  const { method = 'prism cover', repeat = 1 } = readingAt(readings, present) ?? first ?? present;
  const own = { ...present, method, repeat };
  const taking = { ...sitting.taking, condition };
  return { ...sitting, range, correction, taking, open: { cell: own, entry: entryFrom(readingAt(readings, own)) } };
}

/**
 * The open pad after a touch; the reading follows at once.
 * @param {Sitting} sitting
 * @param {Touch} touch
 * @returns {Sitting}
 */
export function padTouched(sitting, touch) {
  if (!sitting.open) return sitting;
  const { cell } = sitting.open;
  const entry = touched(sitting.open.entry, touch);
  const readings = withReading(sitting.draft.readings, cell, figures(entry), techniqueOfNext(sitting.taking, cell));
  return { ...sitting, draft: { ...sitting.draft, readings }, open: { cell, entry } };
}

/**
 * Other prisms, or the same held otherwise: of the open reading and of those taken after it.
 * @param {Sitting} sitting
 * @param {Technique | null} technique
 * @returns {Sitting}
 */
export function heldSo(sitting, technique) {
  const taking = { ...sitting.taking, technique: technique && techniqueWith(technique, { arrangement: 'one' }) };
  if (!sitting.open) return { ...sitting, taking };
  const readings = withTechnique(sitting.draft.readings, sitting.open.cell, technique);
  return { ...sitting, taking, draft: { ...sitting.draft, readings } };
}

/** The prisms of the open reading, or of the next one. @param {Sitting} sitting @returns {Technique | null} */
export function techniqueInView({ draft, taking, open }) {
  const reading = open && readingAt(draft.readings, open.cell);
  return reading ? (reading.technique ?? null) : open ? techniqueOfNext(taking, open.cell) : taking.technique;
}

/**
 * The place that offers itself next: from the open one, or the first of the usual ones on an empty map.
 * @param {Sitting} sitting
 * @returns {Cell | null}
 */
export function offered({ draft, open, correction, taking }) {
  const first = firstUsual(correction, taking.condition);
  if (open) return nextUsual(draft.readings, open.cell);
  return readingsIn(draft.readings, first).length > 0 ? nextUsual(draft.readings, first) : first;
}

/**
 * Leaves the open place for another one, or for the map (`null`); a direction without a figure keeps it open and says why.
 * @param {Sitting} sitting
 * @param {Cell | null} cell
 * @returns {Sitting}
 */
export function moved(sitting, cell) {
  const refusal = sitting.open && unfinished(sitting.open.entry);
  if (sitting.open && refusal) return { ...sitting, open: { ...sitting.open, entry: { ...sitting.open.entry, refusal } } };
  return cell ? opened(sitting, cell) : { ...sitting, open: null };
}

/**
 * The same sitting with some fields of the examination set anew.
 * @param {Sitting} sitting
 * @param {Partial<Draft>} fields
 * @returns {Sitting}
 */
export const noted = (sitting, fields) => ({ ...sitting, draft: { ...sitting.draft, ...fields } });
