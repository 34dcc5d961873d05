/** An operation over time: the alignment of every visit against what the signed plan expected, and what must not wait. */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { today } from '../../parts/calendar/date.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notice, Notices } from '../../parts/notice/notice.js';
import { Picture } from '../../parts/picture/picture.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { careOf, followedBy } from '../../planning/following.js';
import { useAnswer } from '../../planning/use-answer.js';
import { useRights } from '../../planning/use-rights.js';
import { heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { CourseTable } from './course-table.js';
import { KeptVisits } from './kept-visits.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @param {{patient: string, operation: string}} props ids */
export default function CourseRoute({ patient: id, operation: operationId }) {
  const all = useObservable(records);
  const [patient] = heads(all, 'patient', id);
  const followed = followedBy(all, operationId);
  if (!patient || !followed) {
    return html`<${Absent} what="This operation" patient=${patient?.body} step=${{ label: 'To the case', to: patient ? `/patients/${id}` : '/patients' }} />`;
  }
  return html`<${CourseScreen} patient=${patient} followed=${followed} all=${all} />`;
}

/** @param {{patient: LedgerRecord, followed: import('../../planning/following.js').Followed, all: readonly LedgerRecord[]}} props */
function CourseScreen({ patient, followed, all }) {
  const rights = useRights();
  const care = careOf(all, followed, today());
  const { answer, faults } = useAnswer('course', care);
  const course = /** @type {import('./lines.js').Course | null} */ (answer);
  const home = `/patients/${patient.patient}`;
  const next = rights.write('follow_up') ? { label: 'Record a visit', to: `${home}/visit/${followed.operation.id}/new` } : undefined;
  return html`<${Frame} title="Course" patient=${patient.body} back=${home} next=${next} layout="wide">
    <div class="course stack wide">
      ${!care && html`<${Notice} level="caution"><p>The signed plan of this operation is not on this device, so nothing can be compared. The visits are shown as they were recorded.</p><//>`}
      ${care && !course && html`<${EngineWait} faults=${faults} title="The engine cannot tell this course." />`}
      ${course && html`<${Drawn} course=${course} />`}
      <${KeptVisits} records=${all} followed=${followed} course=${course} mayRecord=${rights.write('follow_up')} />
      ${course && html`<p class="small soft">${course.disclaimer}</p>`}
    </div>
  <//>`;
}

/** @param {{course: import('./lines.js').Course}} props */
function Drawn({ course }) {
  return html`
    <${Notices} notices=${[...course.warnings, ...course.notices]} />
    <div class="course-pictures">
      ${course.pictures.map((picture) => html`<figure class="course-figure" key=${picture.title}><figcaption>${picture.title}</figcaption><${Picture} picture=${picture} /></figure>`)}
    </div>
    <${CourseTable} course=${course} />
    <section class="stack tight" aria-label="How it is drawn">
      ${course.statements.map((each) => html`<div key=${each.code}><p class="small">${each.text}</p><${Provenance} of=${each.provenance} /></div>`)}
    </section>
  `;
}
