/** A visit after an operation: which one it was, what was measured, what was looked for; a new one, or one to correct. */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { Empty } from '../../parts/empty/empty.js';
import { Frame } from '../../parts/frame/frame.js';
import { followedBy } from '../../planning/following.js';
import { useRights } from '../../planning/use-rights.js';
import { find, heads, history } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { VisitScreen } from './visit-screen.js';

/** @param {{patient: string, operation: string, visit: string}} props ids; `visit` is `new` for a new one */
export default function VisitRoute({ patient: id, operation: operationId, visit }) {
  const all = useObservable(records);
  const rights = useRights();
  const [patient] = heads(all, 'patient', id);
  const followed = followedBy(all, operationId);
  const corrected = visit === 'new' ? undefined : newestOf(all, visit);
  const back = patient ? `/patients/${id}` : '/patients';
  if (!patient || !followed || (visit !== 'new' && !corrected)) {
    return html`<${Absent} what=${followed ? 'This visit' : 'This operation'} patient=${patient?.body} step=${{ label: 'To the case', to: back }} />`;
  }
  if (!rights.write('follow_up')) {
    return html`<${Frame} title="Visit" patient=${patient.body} back=${back}>
      <${Empty} title="Visits are recorded by surgeons and clinic staff" step=${{ label: 'See the course', to: `${back}/course/${operationId}` }}><p>Your role in this clinic is ${rights.role ?? 'not known'}.</p><//>
    <//>`;
  }
  return html`<${VisitScreen} key=${visit} patient=${patient} followed=${followed} corrected=${corrected} />`;
}

/** The current version of the same visit. @param {readonly import('../../store/envelope.js').LedgerRecord[]} all @param {string} id */
function newestOf(all, id) {
  const family = new Set(history(all, id).map((record) => record.id));
  const record = find(all, id);
  return record && heads(all, 'follow_up', record.patient).find((head) => family.has(head.id));
}
