/** The page with its language; a plan that no longer stands is not explained to anybody. */
import { useObservable } from '../../observable.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Frame } from '../../parts/frame/frame.js';
import { LanguageChoice } from '../../parts/language/language.js';
import { Notice } from '../../parts/notice/notice.js';
import { isVoid, standingOf } from '../../planning/standing.js';
import { useAnswer } from '../../planning/use-answer.js';
import { practiceOf } from '../../preparing/practice.js';
import { records } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { CounsellingPage } from './page.js';
import { reading, setReading, useReader } from './reading.js';

/** @param {{pieces: {patient: import('../../store/envelope.js').LedgerRecord, plan: import('../../store/envelope.js').LedgerRecord, signature?: import('../../store/envelope.js').LedgerRecord}}} props */
export function CounsellingScreen({ pieces: { patient, plan, signature } }) {
  const code = useObservable(reading);
  const all = useObservable(records);
  const isFallen = isVoid(standingOf(all, plan, signature));
  const { speaker, isMissing } = useReader();
  const [both, setBoth] = useState(false);
  const { answer, faults, isFresh } = useAnswer('counselling', isFallen ? null : { plan: plan.body, practice: practiceOf(all).current?.body ?? null });
  const page = isFresh && speaker ? answer : null;
  const next = { label: say('Print'), act: () => window.print(), blocked: page ? undefined : say('The page is not there yet.') };

  return html`<${Frame} title=${say('For the patient')} patient=${patient.body} back=${`/patients/${plan.patient}`} layout="wide" next=${isFallen ? undefined : next}>
    <div class="counsel stack">
      ${isFallen
        ? html`<${Notice} level="stop"><p>${say('This plan was replaced or taken back. Explain the plan that stands.')}</p><//>`
        : html`<div class="screen-only stack">
            <${LanguageChoice} legend=${say('Language of the patient')} name="reading" value=${code} onChange=${setReading} />
            ${code !== 'en' &&
            html`<label class="counsel-both"><input type="checkbox" checked=${both} onChange=${() => setBoth(!both)} /> ${say('Show the English beside it')}</label>`}
          </div>`}
      ${isMissing && html`<${Notice} level="caution"><p>${say('The words of this language are not on this phone yet. Open the app once with a network.')}</p><//>`}
      ${!isFallen && !page && !isMissing && html`<${EngineWait} faults=${faults} title=${say('The engine cannot explain this plan.')} />`}
      ${page && html`<${CounsellingPage} page=${page} speaker=${speaker} both=${both} signature=${signature} />`}
    </div>
  <//>`;
}
