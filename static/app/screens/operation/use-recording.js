/** Holds the recording of a screen: filled in by the engine, kept as a draft at every change, reviewed by the engine again. */
import { today } from '../../parts/calendar/date.js';
import { draftQuestion } from '../../planning/operations.js';
import { writtenBy } from '../../planning/settling.js';
import { useAnswer } from '../../planning/use-answer.js';
import { session } from '../../session/session.js';
import { drafts, records } from '../../store/store.js';
import { useEffect, useMemo, useState } from '../../vendor/preact.js';
import { AROUND, CHECK, begun, bodyOf, resumed, told } from './recording.js';

/** @typedef {import('./recording.js').Recording} Recording */
/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/**
 * @param {import('../../planning/kept-cards.js').Pieces} pieces
 * @param {string} draftName
 * @param {LedgerRecord[]} corrected what is to be replaced
 */
export function useRecording({ plan, signature }, draftName, corrected) {
  const name = session.get().user?.full_name ?? '';
  const surgeons = [...new Set([name, signature.body.signer_name, ...corrected.map((record) => record.body.surgeon_name)])];
  const [recording, setRecording] = useState(/** @type {() => Recording | null} */ (() => drafts.get(draftName)?.recording ?? (corrected.length > 0 ? resumed(corrected[corrected.length - 1].body) : null)));
  const begin = useMemo(
    () => draftQuestion(records.get(), { plan, signature }, { operated_on: today(), surgeon_name: name }),
    [signature.id],
  );
  const drafted = useAnswer('draft_operation', begin);
  const body = recording && writtenBy('operation', bodyOf(recording), name);
  // Only where its answer is shown, and without the note, which changes nothing: no answer is owed for every key that is typed.
  const isAsked = recording?.stage === AROUND || recording?.stage === CHECK;
  const reviewed = useAnswer('review_operation', body && isAsked ? { plan: plan.body, signature: signature.body, operation: { ...body, note: '' } } : null);

  /** @param {Recording} next */
  const kept = (next) => {
    drafts.keep(draftName, { recording: next, corrected: corrected.length > 0 });
    return next;
  };

  useEffect(() => {
    if (!recording && drafted.answer) setRecording(begun(/** @type {any} */ (drafted.answer).operation));
  }, [drafted.answer]);

  // The window follows from the times; the engine works it out, and the record carries it.
  const review = /** @type {any} */ (reviewed.answer);
  const isReviewed = reviewed.isFresh && review !== null;
  useEffect(() => {
    if (!isReviewed) return;
    setRecording((now) => (now && JSON.stringify(review.window) !== JSON.stringify(now.body.window) ? kept(told(now, { window: review.window })) : now));
  }, [review, isReviewed]);

  return { recording, keep: (/** @type {Recording} */ next) => setRecording(kept(next)), body, surgeons, drafted: /** @type {any} */ (drafted.answer), review, isReviewed, faults: [...drafted.faults, ...reviewed.faults] };
}
