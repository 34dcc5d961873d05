/** What follows an operation, on its card in the case: what must not wait, the next visit, and the ways there. */
import { today } from '../../parts/calendar/date.js';
import { Notices } from '../../parts/notice/notice.js';
import { useObservable } from '../../observable.js';
import { dueQuestion, followedBy, watchQuestion } from '../../planning/following.js';
import { useAnswer } from '../../planning/use-answer.js';
import { useRights } from '../../planning/use-rights.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';

/** @param {{operation: import('../../store/envelope.js').LedgerRecord}} props */
export function FollowedLine({ operation }) {
  const rights = useRights();
  const all = useObservable(records);
  const day = today();
  const followed = followedBy(all, operation.id);
  const isFollowed = followed?.operation.id === operation.id && rights.role !== 'theatre';
  const due = useAnswer('visits_due', isFollowed ? dueQuestion(all, [followed], day) : null);
  const watch = useAnswer('visits_watched', isFollowed ? watchQuestion(all, [followed], day) : null);
  if (!isFollowed) return null;
  const attendance = /** @type {any} */ (due.answer);
  const [watched] = /** @type {any[] | null} */ (watch.answer) ?? [];
  const home = `#/patients/${operation.patient}`;
  return html`<section class="stack tight" aria-label="Visits after this operation">
    <${Notices} notices=${watched ? [...watched.warnings, ...watched.notices] : []} />
    ${attendance && html`<p>${attendance.operations[0].next?.words ?? 'No visit is planned any more.'}</p>`}
    <div class="buttons">
      ${rights.write('follow_up') && html`<a class="button" href=${`${home}/visit/${operation.id}/new`}>Record a visit</a>`}
      <a class="button" href=${`${home}/course/${operation.id}`}>Course</a>
    </div>
  </section>`;
}
