/** What the engine derives from the measurements, as sentences with figures; each answers why, with its source. */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notices } from '../../parts/notice/notice.js';
import { dateWords } from '../../parts/calendar/date.js';
import { isGrave } from '../../planning/levels.js';
import { usePlanning } from '../../planning/use-planning.js';
import { find, heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { Finding } from './finding.js';
import { Newer } from './newer.js';

/** @param {{patient: string, examination: string}} props ids */
export default function Findings({ patient: id, examination: examinationId }) {
  const all = useObservable(records);
  const [patient] = heads(all, 'patient', id);
  const examination = find(all, examinationId);
  if (!patient || !examination) {
    return html`<${Absent} what="This examination" patient=${patient?.body} step=${{ label: 'To the case', to: patient ? `/patients/${id}` : '/patients' }} />`;
  }
  return html`<${Shown} key=${examinationId} patient=${patient} examination=${examination} />`;
}

/** @param {{patient: import('../../store/envelope.js').LedgerRecord, examination: import('../../store/envelope.js').LedgerRecord}} props */
function Shown({ patient, examination }) {
  const { proposal, faults } = usePlanning(patient, examination);
  const home = `/patients/${patient.patient}`;
  return html`<${Frame}
    title="Findings"
    patient=${patient.body}
    back=${home}
    also=${{ label: 'Correct', to: `${home}/measure/${examination.id}` }}
    next=${{ label: 'See options', to: `${home}/options/${examination.id}` }}
  >
    <div class="stack">
      <p class="soft">Examined on ${dateWords(examination.body.examined_on)}</p>
      <${Newer} examination=${examination} screen="findings" />
      ${proposal && faults.length === 0
        ? html`<${Notices} notices=${proposal.notices.filter(isGrave)} />
            <ul class="findings">
              ${proposal.findings.map((/** @type {any} */ finding, /** @type {number} */ index) => html`<${Finding} key=${`${finding.code} ${index}`} finding=${finding} />`)}
            </ul>
            <p class="small soft">${proposal.disclaimer} Engine ${proposal.engine_version}.</p>`
        : html`<${EngineWait} faults=${faults} title="The engine cannot say more from this." />`}
    </div>
  <//>`;
}
