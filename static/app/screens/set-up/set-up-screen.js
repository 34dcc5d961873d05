/** The sheet with what the surgeon may change on it. What is typed is kept as a draft; what is printed is what is shown. */
import { useObservable } from '../../observable.js';
import { dateWords } from '../../parts/calendar/date.js';
import { momentWords } from '../../parts/calendar/ago.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notices } from '../../parts/notice/notice.js';
import { PagePdf } from '../../parts/page-pdf/page-pdf.js';
import { TheatreWayNav } from '../../parts/theatre-way/theatre-way.js';
import { otherEntries, patientNow, presentIn } from '../../planning/standing.js';
import { useAnswer } from '../../planning/use-answer.js';
import { useRights } from '../../planning/use-rights.js';
import { practiceOf } from '../../preparing/practice.js';
import { setUpQuestion, withOverride } from '../../preparing/set-ups.js';
import { records } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { Void } from '../card/void.js';
import { Conflict } from '../patient/conflict.js';
import { SetUpItem } from './set-up-item.js';
import { TheatreDim } from './theatre-dim.js';
import { usePreparing } from './use-preparing.js';
import { WishesForm } from './wishes-form.js';

/** @param {{pieces: {patient: import('../../store/envelope.js').LedgerRecord, plan: import('../../store/envelope.js').LedgerRecord, signature?: import('../../store/envelope.js').LedgerRecord}}} props */
export function SetUpScreen({ pieces }) {
  const all = useObservable(records);
  const { current: practice } = practiceOf(all);
  const rights = useRights();
  const mayEdit = rights.write('set_up');
  const { prepared, set, versions, isChanged, save, problem } = usePreparing(pieces.plan, practice);
  const present = presentIn({ now: patientNow(all, pieces), others: otherEntries(all, pieces) });
  const question = { ...setUpQuestion(pieces, prepared, practice), ...present };
  const { answer, faults, isFresh } = useAnswer('set_up', question);
  const sheet = /** @type {any} */ (answer);
  const [isPdfOpen, setPdfOpen] = useState(false);
  const hindrance = isFresh && sheet ? undefined : 'The sheet is not worked out yet.';
  const pdf = { label: 'PDF and print', act: () => setPdfOpen(true), blocked: hindrance };
  const saving = { label: 'Save the set-up', act: save, blocked: hindrance };

  return html`<${Frame}
    title="Set-up for theatre"
    patient=${pieces.patient.body}
    back=${`/patients/${pieces.plan.patient}`}
    layout="wide"
    corner=${sheet && html`<p class="card-corner"><span class="soft">Check word</span> <strong>${sheet.check_word}</strong></p>`}
    next=${mayEdit && isChanged ? saving : pdf}
    also=${mayEdit && isChanged ? pdf : undefined}
  >
    ${rights.role === 'theatre' && html`<${TheatreDim} />`}
    <div class="set-up theatre stack">
      ${pieces.signature && html`<${Void} pieces=${{ ...pieces, signature: pieces.signature }} />`}
      ${pieces.signature && html`<${TheatreWayNav} pieces=${{ plan: pieces.plan, signature: pieces.signature }} here="set-up" />`}
      ${versions.length > 1 && html`<${Conflict} kind="set_up" versions=${versions} />`}
      ${problem && html`<p class="field-fault" role="alert">${problem}</p>`}
      ${sheet && html`<${Heading} sheet=${sheet} saved=${versions[0]} isChanged=${isChanged} />`}
      ${mayEdit && html`<${WishesForm} prepared=${prepared} set=${set} open=${versions.length === 0} />`}
      ${sheet ? html`<${FaultList} faults=${faults} title="This cannot be prepared." />` : html`<${EngineWait} faults=${faults} title="The engine cannot work out this sheet." />`}
      ${sheet?.adjust_from &&
      html`<p class="set-up-adjust">Adjust from <strong>${momentWords(sheet.adjust_from)}</strong> at the earliest</p>`}
      <div class="set-up-items">
        ${sheet?.items.map(
          (/** @type {any} */ item) =>
            html`<${SetUpItem}
              key=${item.item}
              item=${item}
              onChoose=${mayEdit && ((/** @type {any} */ override) => set({ overrides: withOverride(prepared.overrides, item.item, override) }))}
            />`,
        )}
      </div>
      ${sheet &&
      html`<footer class="small stack tight">
        ${sheet.practice_words && html`<p>This clinic's practice: ${sheet.practice_words}</p>`}
        <p>Where nothing else is named, this is common practice of the trade. Engine ${sheet.engine_version}.</p>
        <p>${sheet.disclaimer}</p>
      </footer>`}
    </div>
    ${isPdfOpen && !hindrance && html`<${PagePdf} ask="set_up_pdf" payload=${question} title="Set-up sheet as PDF" name=${`set-up-${sheet.check_word.replace(' ', '-')}`} onClose=${() => setPdfOpen(false)} />`}
  <//>`;
}

/** @param {{sheet: any, saved?: import('../../store/envelope.js').LedgerRecord, isChanged: boolean}} props */
function Heading({ sheet, saved, isChanged }) {
  const who = saved && !isChanged ? `Prepared by ${saved.author}, ${momentWords(saved.recorded_at)}.` : 'Not saved yet.';
  return html`<section class="stack tight" aria-label="Operation">
    <p class="set-up-eyes">${sheet.eyes_words}</p>
    <ul class="set-up-operation">${sheet.operation.map((/** @type {string} */ words) => html`<li key=${words}>${words}</li>`)}</ul>
    <p><strong>${dateWords(sheet.on)}</strong>, ${ageWords(sheet.age_years)}. Allergies: <strong>${sheet.allergies || 'not recorded: ask'}</strong></p>
    <p class="small soft">${who}</p>
    <${Notices} notices=${sheet.notices} />
  </section>`;
}

/** @param {number} years */
const ageWords = (years) => (years === 0 ? 'under 1 year old' : `${years} year${years === 1 ? '' : 's'} old on that day`);
