/** Holds a visit in the making with its draft in the sealed store, and what the engine says of it. */
import { today } from '../../parts/calendar/date.js';
import { careOf, measuredOn } from '../../planning/following.js';
import { useAnswer } from '../../planning/use-answer.js';
import { practiceOf } from '../../preparing/practice.js';
import { drafts } from '../../store/store.js';
import { useState } from '../../vendor/preact.js';
import { find } from '../../store/heads.js';
import { bodyOf, lacking, nameOf, newVisit, visitFrom } from './visiting.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('../../planning/following.js').Followed} Followed */
/** @typedef {import('./visiting.js').Visiting} Visiting */
/** @typedef {{days_after: number, proposed: string | null, planned: any[], ahead: any[], statements: any[]}} VisitDraft */
/** @typedef {{hindrances: import('../../planning/use-answer.js').FaultFacts[], warnings: any[], statements: any[]}} VisitReview */

/**
 * @param {readonly LedgerRecord[]} records
 * @param {Followed} followed
 * @param {LedgerRecord | undefined} corrected
 */
export function useVisit(records, followed, corrected) {
  const { operation } = followed;
  const draftName = corrected ? `follow-up/${operation.id}/${corrected.id}` : `follow-up/${operation.id}`;
  const start = () => (corrected ? visitFrom(corrected.body, operation.body.operated_on) : newVisit(today()));
  const [visiting, setVisiting] = useState(/** @type {() => Visiting} */ (() => drafts.get(draftName) ?? start()));
  const others = followed.visits.filter(({ id }) => id !== corrected?.id);
  const { answer: drafted } = useAnswer('draft_follow_up', { operated_on: operation.body.operated_on, seen_on: visiting.seen_on, follow_ups: others.map(({ body }) => body), practice: practiceOf(records).current?.body ?? null });
  const draft = /** @type {VisitDraft | null} */ (drafted);
  const name = nameOf(visiting, draft?.proposed ?? null);
  const [examination] = measuredOn(records, operation, visiting.seen_on, corrected?.id);
  // A correction speaks of the version of the operation that the visit named: the clinic asks for that.
  const named = (corrected && find(records, corrected.body.operation_id)) ?? operation;
  const body = bodyOf(visiting, { name, operation: named, examination });
  const care = careOf(records, followed, null, others);
  const lack = draft ? lacking(visiting, name) : 'The engine has not looked at it yet.';
  const reviewed = useAnswer('review_follow_up', lack || !care ? null : { care, visit: { follow_up: body, examination: examination?.body ?? null } });
  const review = /** @type {VisitReview | null} */ (reviewed.answer);

  return {
    visiting,
    draftName,
    draft,
    name,
    examination,
    body,
    lack,
    review,
    faults: reviewed.faults,
    isReviewed: reviewed.isFresh && review !== null,
    hasPlan: care !== null,
    /** Null while nothing is unsaved. */
    discard: drafts.get(draftName)
      ? () => {
          drafts.drop(draftName);
          setVisiting(start());
        }
      : null,
    /** @param {Partial<Visiting>} fields */
    tell: (fields) => {
      const next = { ...visiting, ...fields };
      drafts.keep(draftName, next);
      setVisiting(next);
    },
  };
}
