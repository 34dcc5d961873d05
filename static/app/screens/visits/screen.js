/** Visits after operations: what must not wait, who is overdue, due and coming. All from this device, with or without a network. */
import { useObservable } from '../../observable.js';
import { today } from '../../parts/calendar/date.js';
import { Empty } from '../../parts/empty/empty.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Fold } from '../../parts/fold/fold.js';
import { Frame } from '../../parts/frame/frame.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { dueQuestion, followedOf, watchQuestion } from '../../planning/following.js';
import { useAnswer } from '../../planning/use-answer.js';
import { useRights } from '../../planning/use-rights.js';
import { heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html, useMemo } from '../../vendor/preact.js';
import { rowsOf } from './rows.js';
import { VisitRow } from './visit-row.js';

/** @typedef {import('./rows.js').Row} Row */

/** Those to come are drawn so many at first. */
const AT_FIRST = 20;

export default function Visits() {
  const rights = useRights();
  if (rights.role === 'theatre') {
    return html`<${Frame} title="Visits" back="/patients">
      <${Empty} title="Visits are not on theatre devices" step=${{ label: 'Show all patients', to: '/patients' }}><p>Surgeons, clinic staff and coordinators see who is to come.</p><//>
    <//>`;
  }
  return html`<${Due} mayRecord=${rights.write('follow_up')} />`;
}

/** @param {{mayRecord: boolean}} props */
function Due({ mayRecord }) {
  const all = useObservable(records);
  const day = today();
  const followed = useMemo(() => followedOf(all), [all]);
  const due = useAnswer('visits_due', useMemo(() => dueQuestion(all, followed, day), [all, followed, day]));
  const watch = useAnswer('visits_watched', useMemo(() => watchQuestion(all, followed, day), [all, followed, day]));
  const attendance = /** @type {import('./rows.js').Attendance | null} */ (due.answer);
  const watched = /** @type {import('./rows.js').Watched[] | null} */ (watch.answer);

  if (followed.length === 0) {
    return html`<${Frame} title="Visits" back="/patients">
      <${Empty} title="Nobody to follow yet"><p>Who was operated on by a signed plan is listed here from the day of the operation record.</p><//>
    <//>`;
  }
  if (!attendance || !watched) {
    return html`<${Frame} title="Visits" back="/patients"><${EngineWait} faults=${[...due.faults, ...watch.faults]} title="The engine cannot tell who is to be seen." /><//>`;
  }
  const rows = rowsOf({ followed, patientOf: (patient) => heads(all, 'patient', patient)[0], attendance, watched });
  const isEmpty = Object.values(rows).every(({ length }) => length === 0);
  return html`<${Frame} title="Visits" back="/patients" corner=${html`<a class="button bare" href="#/results">Results</a>`}>
    <div class="visits stack wide">
      ${isEmpty && html`<${Empty} title="No visit is planned"><p>All planned visits were kept or are over.</p><//>`}
      <${Group} title="Must not wait" rows=${rows.urgent} mayRecord=${mayRecord} />
      <${Group} title="Overdue" rows=${rows.overdue} mayRecord=${mayRecord} />
      <${Group} title="Due" rows=${rows.due} mayRecord=${mayRecord} />
      <${Group} title="Coming" rows=${rows.coming.slice(0, AT_FIRST)} mayRecord=${mayRecord} />
      ${rows.coming.length > AT_FIRST &&
      html`<${Fold} title="Later" holds=${`${rows.coming.length - AT_FIRST} more`}><${Group} title="Later still" rows=${rows.coming.slice(AT_FIRST)} mayRecord=${mayRecord} /><//>`}
      <section class="stack tight" aria-label="How visits are planned">
        ${attendance.statements.map((each) => html`<div key=${each.code}><p class="small">${each.text}</p><${Provenance} of=${each.provenance} /></div>`)}
        <p class="small soft">Warnings are looked for in visits of the last 60 days. Visits are planned anew when one is recorded.</p>
      </section>
    </div>
  <//>`;
}

/** @param {{title: string, rows: Row[], mayRecord: boolean}} props */
function Group({ title, rows, mayRecord }) {
  if (rows.length === 0) return null;
  return html`<section class="stack tight" aria-label=${title}>
    <h2>${title} <span class="soft">(${rows.length})</span></h2>
    ${rows.map((row) => html`<${VisitRow} key=${row.followed.operation.id} row=${row} mayRecord=${mayRecord} />`)}
  </section>`;
}
