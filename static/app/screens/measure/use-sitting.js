/** Holds the sitting of a screen: what each touch makes of it, what undo takes back, and its draft in the sealed store. */
import { drafts } from '../../store/store.js';
import { useLayoutEffect, useState } from '../../vendor/preact.js';
import { draftFrom } from './examination.js';
import { newSitting, restored, sittingOf } from './sitting.js';
import { begin, look, step, undo as undone } from './undo.js';

/** @typedef {import('./sitting.js').Sitting} Sitting */
/** @typedef {(change: (now: Sitting) => Sitting) => void} Change */

/**
 * @param {string} patient id
 * @param {import('../../store/envelope.js').LedgerRecord | undefined} corrected the examination to correct
 * @param {string} day today, for a new examination
 * @returns {{sitting: Sitting, change: Change, show: Change, undo: () => void, canUndo: boolean, discard: (() => void) | null, draftName: string}}
 *   `change` may be undone, `show` only turns to another place; `discard` is null while nothing is unsaved
 */
export function useSitting(patient, corrected, day) {
  const draftName = corrected ? `examination/${patient}/${corrected.id}` : `examination/${patient}`;
  const [start] = useState(() => (corrected ? sittingOf(draftFrom(corrected.body)) : newSitting(day)));
  const [timeline, setTimeline] = useState(() => begin(keptSitting(draftName) ?? start));
  const sitting = timeline.now;

  // Before the next paint, so that a touch is in the draft book even if the app is left at once.
  useLayoutEffect(() => {
    if (sameWork(sitting, start)) drafts.drop(draftName);
    else drafts.keep(draftName, sitting);
  }, [sitting]);

  return {
    sitting,
    draftName,
    change: (make) => setTimeline((before) => step(before, make(before.now))),
    show: (make) => setTimeline((before) => look(before, make(before.now))),
    undo: () => setTimeline(undone),
    canUndo: timeline.past.length > 0,
    discard: sameWork(sitting, start) ? null : () => setTimeline((before) => step(before, start)),
  };
}

/** @param {string} name @returns {Sitting | null} */
function keptSitting(name) {
  const kept = drafts.get(name);
  return kept ? restored(kept) : null;
}

/**
 * Whether nothing has been entered that is not saved.
 * @param {Sitting} sitting
 * @param {Sitting} start
 */
const sameWork = (sitting, start) => !sitting.open && JSON.stringify(sitting.draft) === JSON.stringify(start.draft);
