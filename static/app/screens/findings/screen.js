/** What the engine derives from the measurements, as sentences with figures; each answers why, with its source. */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { Choice } from '../../parts/choice/choice.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Fold } from '../../parts/fold/fold.js';
import { Frame } from '../../parts/frame/frame.js';
import { NineGaze } from '../../parts/nine-gaze/nine-gaze.js';
import { Notices } from '../../parts/notice/notice.js';
import { dateWords } from '../../parts/calendar/date.js';
import { isGrave } from '../../planning/levels.js';
import { usePlanning } from '../../planning/use-planning.js';
import { find, heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { CORRECTION_WORDS, RANGE_WORDS } from '../../words/reading.js';
import { Finding } from './finding.js';
import { grouped, isMissing, isSuggestedCode } from './groups.js';
import { MeasuredList } from './measured.js';
import { Newer } from './newer.js';
import { placesUnder } from './places.js';
import { Target } from './target.js';

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
    layout="wide"
    also=${{ label: 'Correct', to: `${home}/measure/${examination.id}` }}
    next=${{ label: 'See options', to: `${home}/options/${examination.id}` }}
  >
    <div class="stack">
      <p class="soft">Examined on ${dateWords(examination.body.examined_on)}</p>
      <${Newer} examination=${examination} screen="findings" />
      ${proposal && faults.length === 0
        ? html`<${Notices} notices=${proposal.notices.filter(isGrave)} />
            <${Said} proposal=${proposal} />
            <p class="small soft">${proposal.disclaimer} Engine ${proposal.engine_version}.</p>`
        : html`<${EngineWait} faults=${faults} title="The engine cannot say more from this." />`}
    </div>
  <//>`;
}

/** What was found, beside what it was found in. @param {{proposal: any}} props */
function Said({ proposal: { findings, measured = [], target } }) {
  const codes = findings.filter(isSuggestedCode);
  const missing = findings.filter(isMissing);
  return html`<div class="findings-pair">
    <div class="stack">
      <${Target} target=${target} />
      ${grouped(findings).map(
        ({ title, findings: found }) => html`<section key=${title} aria-label=${title}>
          <h2 class="findings-title">${title}</h2>
          <ul class="findings">${found.map((finding, index) => html`<${Finding} key=${`${finding.code} ${index}`} finding=${finding} />`)}</ul>
        </section>`,
      )}
      ${missing.length > 0 &&
      html`<${Fold} title="Not measured" holds=${`${missing.length}, with what each would tell`}>
        <ul class="findings">${missing.map((/** @type {any} */ finding) => html`<${Finding} key=${finding.code} finding=${finding} />`)}</ul>
      <//>`}
      ${codes.length > 0 &&
      html`<${Fold} title="ICD-10, to be confirmed" holds=${codes.map((/** @type {any} */ { facts }) => facts.icd10).join(', ')}>
        <ul class="findings">${codes.map((/** @type {any} */ finding, /** @type {number} */ index) => html`<${Finding} key=${index} finding=${finding} />`)}</ul>
      <//>`}
    </div>
    <div class="stack">
      <${InEachGaze} measured=${measured} correction=${target.reading.correction} />
      ${measured.length > 0 && html`<${Fold} title="Every position, as it counts" holds=${`${measured.length} measured`}><${MeasuredList} measured=${measured} /><//>`}
    </div>
  </div>`;
}

/** @param {{measured: import('./places.js').Measured[], correction: string}} props */
function InEachGaze({ measured, correction }) {
  const [range, setRange] = useState('distance');
  const places = placesUnder(measured, { range, correction });
  const atNear = placesUnder(measured, { range: 'near', correction });
  if (places.length === 0) return null;
  return html`<section class="stack tight" aria-label="In each gaze">
    <h2 class="findings-title">In each gaze</h2>
    ${atNear.length > 0 &&
    html`<${Choice} legend="Range shown" quiet=${true} name="range-shown" options=${['distance', 'near'].map((value) => ({ value, words: RANGE_WORDS[value] }))} value=${range} onChange=${setRange} />`}
    <${NineGaze} places=${places} label=${`As measured, ${RANGE_WORDS[range]}, ${CORRECTION_WORDS[correction]}`} />
  </section>`;
}
