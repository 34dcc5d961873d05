/**
 * The whole state of the measuring screen as one value: what was measured, where the surgeon looks, which place is open
 * and what is half typed. It is kept as the draft at every touch, so a killed app opens again exactly here.
 */

import { entryFrom, figures, touched, unfinished } from '../../parts/number-pad/prism-entry.js';
import { readingAt, withReading } from './cells.js';
import { emptyDraft } from './examination.js';
import { firstUsual, nextUsual } from './usual-order.js';

/** @typedef {import('../../words/reading.js').Cell} Cell */
/** @typedef {import('./examination.js').Draft} Draft */
/** @typedef {import('../../parts/number-pad/prism-entry.js').Entry} Entry */
/** @typedef {import('../../parts/number-pad/prism-entry.js').Touch} Touch */
/** @typedef {{draft: Draft, range: string, correction: string, open: {cell: Cell, entry: Entry} | null}} Sitting */

/**
 * @param {Draft} draft
 * @returns {Sitting}
 */
export function sittingOf(draft) {
  const correction = draft.readings[0]?.correction ?? 'with';
  return { draft, range: 'distance', correction, open: null };
}

/** @param {string} today @returns {Sitting} */
export const newSitting = (today) => sittingOf(emptyDraft(today));

/**
 * The same sitting turned to another range or correction; an open pad follows.
 * @param {Sitting} sitting
 * @param {{range?: string, correction?: string}} conditions
 * @returns {Sitting}
 */
export function turned(sitting, conditions) {
  const next = { ...sitting, ...conditions };
  if (!sitting.open) return next;
  return opened(next, { ...sitting.open.cell, ...conditions });
}

/**
 * @param {Sitting} sitting
 * @param {Cell} cell
 * @returns {Sitting}
 */
export function opened(sitting, cell) {
  const { range, correction } = cell;
  return { ...sitting, range, correction, open: { cell, entry: entryFrom(readingAt(sitting.draft.readings, cell)) } };
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
  const readings = withReading(sitting.draft.readings, cell, figures(entry));
  return { ...sitting, draft: { ...sitting.draft, readings }, open: { cell, entry } };
}

/**
 * The place that offers itself next: from the open one, or the first of the usual ones on an empty map.
 * @param {Sitting} sitting
 * @returns {Cell | null}
 */
export function offered({ draft, open, correction }) {
  const first = firstUsual(correction);
  if (open) return nextUsual(draft.readings, open.cell);
  return readingAt(draft.readings, first) ? nextUsual(draft.readings, first) : first;
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
