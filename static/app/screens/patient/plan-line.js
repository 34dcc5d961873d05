/** A plan in short: the operation, muscle by muscle with the side in words, whether it is signed, and where it leads. */
import { momentWords } from '../../parts/calendar/ago.js';
import { Mark } from '../../parts/mark/mark.js';
import { Notice } from '../../parts/notice/notice.js';
import { useObservable } from '../../observable.js';
import { operationsBy } from '../../planning/operations.js';
import { useRights } from '../../planning/use-rights.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { EYE_WORDS, MUSCLE_WORDS, doneWords } from '../../words/anatomy.js';
import { mmWords } from '../../words/figures.js';
import { ChecksLink } from '../theatre-check/checks-link.js';
import { ToOperation } from './operated.js';
import { TakeBack } from './take-back.js';

/** @param {{patient: string, planned: import('./line.js').Planned}} props */
export function PlanLine({ patient, planned: { plan, signature, patientChanged } }) {
  const rights = useRights();
  const all = useObservable(records);
  const { option, table, engine_version } = plan.body;
  return html`<section class="plan-line stack tight" aria-label=${signature ? 'Signed plan' : 'Plan, not signed'}>
    <p class="plan-line-state">
      ${signature ? html`<${Mark} name="done" /><strong>Signed</strong>` : html`<strong>Planned, not signed</strong>`}
      <span class="soft small">${signature ? `${signature.body.signer_name}, ${momentWords(signature.body.signed_at)}` : `${plan.author}, ${momentWords(plan.recorded_at)}`}</span>
    </p>
    <ul class="plan-line-doses">
      ${option.doses.map(
        (dose) => html`<li key=${`${dose.eye} ${dose.muscle}`}>
          <span class="side">${EYE_WORDS[dose.eye]}</span> ${MUSCLE_WORDS[dose.muscle]}, ${doneWords(dose)} <strong class="plan-line-mm">${dose.mm === null ? '' : mmWords(dose.mm)}</strong>
        </li>`,
      )}
    </ul>
    <p class="small soft">Table ${table.name}, engine ${engine_version}${signature && html`, check word <strong class="check-word">${signature.body.check_word}</strong>`}</p>
    ${patientChanged &&
    html`<${Notice} level="caution"><p>The patient’s details were changed after this plan was made. Compare them before relying on it.</p><//>`}
    <div class="buttons">
      ${signature
        ? html`<a class="button" href=${`#/patients/${patient}/card/${signature.id}`}>Card</a>`
        : html`<a class="button" href=${`#/patients/${patient}/sign/${plan.id}`}>${rights.write('signature') ? 'Sign' : 'See the plan'}</a>`}
      ${signature && html`<${ChecksLink} signature=${signature} />`}
      <a class="button" href=${`#/patients/${patient}/set-up/${plan.id}`}>Set-up</a>
      <a class="button" href=${`#/patients/${patient}/counselling/${plan.id}`}>For the patient</a>
      ${signature && html`<${ToOperation} signature=${signature} isOperated=${operationsBy(all, signature).length > 0} />`}
      <${TakeBack} record=${signature ?? plan} what=${signature ? 'this signature' : 'this plan'} />
    </div>
  </section>`;
}
