/** What this clinic does otherwise than common practice: what is usual for each item, the figures behind set-up, list and kit, the visits afterwards. */
import { useObservable } from '../../observable.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Field } from '../../parts/field/field.js';
import { Frame } from '../../parts/frame/frame.js';
import { momentWords } from '../../parts/calendar/ago.js';
import { useAnswer } from '../../planning/use-answer.js';
import { useRights } from '../../planning/use-rights.js';
import { practiceOf } from '../../preparing/practice.js';
import { session } from '../../session/session.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { Conflict } from '../patient/conflict.js';
import { FigureRow } from './figure-row.js';
import { ItemCustom } from './item-custom.js';
import { UsualVisits } from './usual-visits.js';
import { usePractice } from './use-practice.js';

export default function PracticeScreen() {
  const { current, versions } = practiceOf(useObservable(records));
  const who = useObservable(session).user?.full_name ?? '';
  const mayEdit = useRights().write('practice');
  const { practice, set, setChoice, setFigure, save, isChanged, faults } = usePractice(current, versions, who);
  const { answer, faults: refused } = useAnswer('practice_form', { practice: current?.body ?? null });
  const form = /** @type {any} */ (answer);
  const next = mayEdit && isChanged ? { label: 'Save for the clinic', act: save } : undefined;

  return html`<${Frame} title="This clinic's practice" back="/settings" next=${next}>
    <div class="practice stack wide">
      <p>
        Set-up sheets, lists, kits and visits start from common practice of the trade. What is set here takes its place for this clinic, and is marked so wherever it is shown. What is refused to
        everybody stays refused.
      </p>
      ${versions.length > 1 && html`<${Conflict} kind="practice" versions=${versions} />`}
      ${current && html`<p class="small soft">As ${current.body.decided_by} decided: ${current.body.reason} (${current.author}, ${momentWords(current.recorded_at)})</p>`}
      <${FaultList} faults=${faults} title="Not saved yet. Nothing you entered is lost." />
      ${!form && html`<${EngineWait} faults=${refused} />`}
      ${form &&
      html`<section class="stack" aria-labelledby="usual-heading">
        <h2 id="usual-heading">What is usual here</h2>
        ${form.items.map((/** @type {any} */ item) => html`<${ItemCustom} key=${item.item} item=${item} own=${practice.choices.find((each) => each.item === item.item)} set=${mayEdit && setChoice} />`)}
      </section>`}
      ${form &&
      html`<section class="stack" aria-labelledby="figures-heading">
        <h2 id="figures-heading">Figures</h2>
        ${form.figures.map((/** @type {any} */ figure) => html`<${FigureRow} key=${figure.name} figure=${figure} own=${practice.figures.find((each) => each.name === figure.name)?.value} set=${mayEdit && setFigure} />`)}
      </section>`}
      ${form &&
      html`<section class="stack" aria-labelledby="visits-heading">
        <h2 id="visits-heading">Visits after an operation</h2>
        <${UsualVisits} form=${form.visits} own=${practice.visits ?? null} faults=${faults} set=${mayEdit && ((/** @type {any} */ visits) => set({ visits }))} />
      </section>`}
      ${mayEdit &&
      html`<section class="stack" aria-labelledby="decided-heading">
        <h2 id="decided-heading">Who decided, and why</h2>
        <${Field} label="Decided by" name="practice-by" value=${practice.decided_by} onInput=${(/** @type {string} */ decided_by) => set({ decided_by })} input=${{ maxlength: 120 }} />
        <${Field} label="Reason" name="practice-reason" value=${practice.reason} onInput=${(/** @type {string} */ reason) => set({ reason })} rows=${2} hint="At least ten characters; it is printed on every sheet." input=${{ maxlength: 400 }} />
      </section>`}
    </div>
  <//>`;
}
