/** What became of this clinic's operations, from what this device holds: group by group, with intervals, charts and cautions. */
import { useAudit } from '../../auditing/use-audit.js';
import { useResults } from '../../auditing/use-results.js';
import { useObservable } from '../../observable.js';
import { today } from '../../parts/calendar/date.js';
import { Choice } from '../../parts/choice/choice.js';
import { Empty } from '../../parts/empty/empty.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notices } from '../../parts/notice/notice.js';
import { PagePdf } from '../../parts/page-pdf/page-pdf.js';
import { useRights } from '../../planning/use-rights.js';
import { session } from '../../session/session.js';
import { html, useMemo, useState } from '../../vendor/preact.js';
import { ExportSheet } from './export-sheet.js';
import { Group } from './group.js';
import { Groups } from './groups.js';
import { Rules } from './rules.js';

const BY = [
  { value: 'surgeon', words: 'Surgeon' },
  { value: 'all', words: 'Whole clinic' },
  { value: 'diagnosis', words: 'Diagnosis' },
  { value: 'family', words: 'Operation' },
  { value: 'table', words: 'Dose table' },
];

export default function Results() {
  const rights = useRights();
  if (rights.role === 'theatre') {
    return html`<${Frame} title="Results" back="/patients">
      <${Empty} title="Results are not on theatre devices" step=${{ label: 'Show all patients', to: '/patients' }}><p>They need the visits after operations, which theatre devices are not handed.</p><//>
    <//>`;
  }
  return html`<${Audited} />`;
}

function Audited() {
  const { user, clinic } = useObservable(session);
  const { total, done, absent, untold, counted, faults } = useResults();
  const [by, setBy] = useState('surgeon');
  const [group, setGroup] = useState(/** @type {string | null} */ (null));
  const [open, setOpen] = useState(/** @type {'' | 'pdf' | 'csv'} */ (''));
  const results = useMemo(() => (counted && counted.length > 0 ? counted.map(({ result }) => result) : null), [counted]);
  const shown = { by, only: group === null ? null : [group], own: user?.full_name ?? '', clinic: clinic?.name ?? '', untold, on: today() };
  const { audit, question, faults: refused, isFresh } = useAudit(results, shown);

  if (total === 0) {
    return html`<${Frame} title="Results" back="/patients">
      <${Empty} title="No results yet"><p>Operations by a signed plan are counted here from the day of their record, and judged when they were seen again.</p><//>
    <//>`;
  }
  if (!counted) {
    return html`<${Frame} title="Results" back="/patients"><${Progress} done=${done} total=${total} faults=${faults} /><//>`;
  }
  if (!results) {
    return html`<${Frame} title="Results" back="/patients">
      <${Empty} title="Nothing can be judged here yet"><p>${total} recorded, but no plan of them expected a change of a horizontal deviation at distance, which is what is judged.</p><//>
    <//>`;
  }
  if (!audit) return html`<${Frame} title="Results" back="/patients"><${EngineWait} faults=${refused} title="The engine cannot count these." /><//>`;

  const choose = (/** @type {string} */ value) => {
    setBy(value);
    setGroup(null);
  };
  const blocked = isFresh ? undefined : 'Not counted yet.';
  return html`<${Frame} title="Results" back="/patients" layout="wide" next=${{ label: 'PDF and print', act: () => setOpen('pdf'), blocked }} also=${{ label: 'CSV without names', act: () => setOpen('csv') }}>
    <div class="results stack wide" aria-busy=${!isFresh}>
      <p class="results-whose">${whose(clinic?.name)} ${audit.window_words} after the operation counts.</p>
      <${Choice} legend="Put together by" name="results-by" options=${BY} value=${by} onChange=${choose} />
      ${refused.length > 0 && html`<${EngineWait} faults=${refused} title="The engine cannot count these." />`}
      <${Notices} notices=${audit.notices} />
      ${absent > 0 && html`<p>${absent} more ${absent === 1 ? 'operation is' : 'operations are'} not counted: the plan is not on this device.</p>`}
      ${audit.lines.length > 1 && html`<${Groups} lines=${audit.lines} chosen=${audit.groups[0]?.name} onChoose=${setGroup} />`}
      ${audit.groups.map((/** @type {any} */ each) => html`<${Group} key=${each.name} group=${each} />`)}
      <${Rules} rules=${audit.rules} />
      <p class="small">Engine ${audit.engine_version}. ${audit.disclaimer}</p>
    </div>
    ${open === 'pdf' && question && html`<${PagePdf} ask="audit_pdf" payload=${question} title="Results as PDF" name="results" onClose=${() => setOpen('')} />`}
    ${open === 'csv' && html`<${ExportSheet} counted=${counted} onClose=${() => setOpen('')} />`}
  <//>`;
}

/** @param {string | undefined} clinic */
const whose = (clinic) =>
  `This device holds what every surgeon of ${clinic ?? 'this clinic'} recorded, so every surgeon, clinic member and coordinator who signs in can see all of it; one's own stands first.`;

/** @param {{done: number, total: number, faults: import('../../planning/use-answer.js').FaultFacts[]}} props */
function Progress({ done, total, faults }) {
  if (faults.length > 0) return html`<${EngineWait} faults=${faults} title="The engine cannot read these operations." />`;
  return html`<div class="stack" role="status">
    ${done === 0 && html`<${EngineWait} />`}
    <p>Reading ${done} of ${total} operations. Each is read once and kept on this phone.</p>
    <progress class="results-progress" max=${total} value=${done} aria-label="Operations read"></progress>
  </div>`;
}
