/** A surgeon's old cases from a table: the template, a dry run that names every wrong cell, and one step to undo it. */
import { useObservable } from '../../observable.js';
import { momentWords } from '../../parts/calendar/ago.js';
import { Empty } from '../../parts/empty/empty.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Fold } from '../../parts/fold/fold.js';
import { Frame } from '../../parts/frame/frame.js';
import { useAnswer } from '../../planning/use-answer.js';
import { useRights } from '../../planning/use-rights.js';
import { heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { RowList } from '../exchange/row-list.js';
import { keep } from '../hand-over/saving.js';
import { TakeBack } from '../patient/take-back.js';
import { useNotebook } from './use-notebook.js';

export default function NotebookScreen() {
  const current = heads(useObservable(records), 'notebook');
  const { read, busy, told, faults, open, carryOver, template } = useNotebook();
  const may = useRights().write('notebook');
  const ready = read?.reading.notebook;
  const next = ready ? { label: busy || `Carry over ${caseWords(ready.cases.length)}`, act: carryOver } : undefined;
  if (!may && current.length === 0) return html`<${NotHere} />`;
  return html`<${Frame} title="Old cases from a notebook" back="/exchange" next=${next}>
    <div class="stack wide">
      <p>Operations from before this app, one in a row, so that your own results and what is learned of them do not begin with nothing. They count as carried over: no plan and no signature stands behind them. No patient is named in them.</p>
      <${FaultList} faults=${faults} title="The file was not read. Nothing was changed." />
      ${may && html`<${Choosing} open=${open} template=${template} />`}
      <p role="status">${busy || told}</p>
      ${read && html`<${DryRun} name=${read.name} reading=${read.reading} />`}
      <${CarriedOver} notebooks=${current} />
    </div>
  <//>`;
}

/** @param {{open: (file: File) => void, template: () => Promise<File | null>}} props */
function Choosing({ open, template }) {
  const { answer } = useAnswer('notebook_template', {});
  const columns = /** @type {any} */ (answer)?.columns ?? [];
  const save = async () => {
    const file = await template();
    if (file) keep(file);
  };
  const choose = (/** @type {HTMLInputElement} */ input) => {
    const [file] = input.files ?? [];
    if (file) open(file);
    input.value = '';
  };
  return html`<section class="stack" aria-labelledby="the-file">
    <h2 id="the-file">The file</h2>
    <div class="buttons"><button type="button" class="button" onClick=${save}>Save an empty table</button></div>
    <p class="small soft">It holds one invented row that shows how. Delete that row: it is not taken.</p>
    <${Fold} title="What each column holds">
      <dl class="facts">${columns.map((/** @type {any} */ column) => html`<div class="fact" key=${column.name}><dt>${column.name}${column.needed ? '' : ' (may be empty)'}</dt><dd>${column.words}</dd></div>`)}</dl>
    <//>
    <label class="field">
      <span class="field-label">Your table</span>
      <span class="field-hint">CSV, saved from a spreadsheet. It is read and shown first; nothing is saved yet.</span>
      <input class="input" type="file" accept=".csv,.tsv,.txt,text/csv,text/plain" onChange=${(/** @type {any} */ event) => choose(event.currentTarget)} />
    </label>
  </section>`;
}

/** @param {{name: string, reading: import('./use-notebook.js').Reading}} props */
function DryRun({ name, reading }) {
  const { rows, already, faults, notebook } = reading;
  return html`<section class="stack" aria-labelledby="dry-run">
    <h2 id="dry-run">${faults.length > 0 ? 'Not carried over yet' : 'Ready'}</h2>
    <p><span class="exchange-name">${name}</span>: ${rows === 1 ? '1 row' : `${rows} rows`}.
      ${already.length > 0 && ` ${caseWords(already.length)} carried over before: ${already.length === 1 ? 'it is' : 'they are'} left as ${already.length === 1 ? 'it is' : 'they are'}.`}
      ${!notebook && faults.length === 0 && ' Nothing in it is new.'}</p>
    ${faults.length > 0 &&
    html`<p>Correct ${faults.length === 1 ? 'this cell' : `these ${faults.length} cells`} in your table and choose it again. A notebook is carried over whole: leaving out what does not fit would bend your results.</p>
      <${RowList} rows=${faults.map(({ row, column, text, value, allowed }) => ({ place: `Row ${row}${column ? `, ${column}` : ''}`, text, value, allowed }))} />`}
  </section>`;
}

/** @param {{notebooks: import('../../store/envelope.js').LedgerRecord[]}} props */
function CarriedOver({ notebooks }) {
  return html`<section class="stack" aria-labelledby="carried-over">
    <h2 id="carried-over">Carried over</h2>
    ${notebooks.length === 0 && html`<p class="soft">Nothing yet.</p>`}
    ${notebooks.map(
      (record) => html`<article class="card stack tight" key=${record.id}>
        <p><strong class="exchange-name">${record.body.title}</strong> ${caseWords(record.body.cases.length)}, ${record.body.surgeon_name}</p>
        <p class="small soft">${momentWords(record.recorded_at)}</p>
        <div class="buttons"><${TakeBack} record=${record} what="this import" /></div>
      </article>`,
    )}
  </section>`;
}

function NotHere() {
  return html`<${Frame} title="Old cases from a notebook" back="/settings">
    <${Empty} title="Nothing carried over yet" step=${{ label: 'Settings', to: '/settings' }}><p>A surgeon of the clinic carries over old cases.</p><//>
  <//>`;
}

/** @param {number} count */
const caseWords = (count) => (count === 1 ? '1 case' : `${count} cases`);
