/** Records from a FHIR file: what would be taken and what not, shown before anything is saved. */
import { counted } from '../../exchange/bundles.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';
import { RowList } from './row-list.js';
import { useImport } from './use-import.js';

const FATES = { taken: 'would be taken', 'here already': 'are here already', 'with its record': 'go with their record', 'made again here': 'are made again here', 'not taken': 'cannot be taken' };

export function Take() {
  const { read, saved, stage, progress, faults, open, take, undo } = useImport();
  if (stage === 'saved' || stage === 'undone') return html`<${Done} count=${saved.length} isUndone=${stage === 'undone'} progress=${progress} faults=${faults} undo=${undo} />`;

  const count = read?.records.length ?? 0;
  const next = stage === 'shown' && count > 0 ? { label: progress || `Take ${countWords(count)}`, act: take } : undefined;
  return html`<${Frame} title="Import from FHIR" back="/exchange" next=${next}>
    <div class="stack wide">
      <${FaultList} faults=${faults} title=${saved.length ? `Stopped after ${countWords(saved.length)}. Taking the file again goes on from there.` : 'Nothing was taken.'} />
      <label class="field">
        <span class="field-label">A FHIR file</span>
        <span class="field-hint">A Bundle as JSON. It is read and shown first; nothing is saved yet.</span>
        <input class="input" type="file" accept=".json,application/fhir+json,application/json" onChange=${(/** @type {any} */ event) => chosen(event.currentTarget, open)} />
      </label>
      <p role="status" class="soft">${progress}</p>
      ${read && html`<${Shown} read=${read} />`}
    </div>
  <//>`;
}

/** @param {HTMLInputElement} input @param {(file: File) => void} open */
function chosen(input, open) {
  const [file] = input.files ?? [];
  if (file) open(file);
  input.value = '';
}

/** @param {{read: import('./use-import.js').Read}} props */
function Shown({ read }) {
  const refused = read.rows.filter(({ fate }) => fate === 'not taken');
  const told = read.rows.filter(({ fate, text }) => fate !== 'not taken' && text);
  return html`<section class="stack" aria-labelledby="dry-run">
    <h2 id="dry-run">What the file holds</h2>
    <p>${read.name}: ${read.rows.length} entries. Nothing is saved yet.</p>
    <dl class="facts">
      ${counted(read.rows).map(({ fate, count }) => html`<div class="fact" key=${fate}><dt>${FATES[/** @type {keyof typeof FATES} */ (fate)]}</dt><dd>${count}</dd></div>`)}
    </dl>
    ${read.records.length > 0 && html`<p class="small soft">They are saved as brought by you, under their own ids; the file keeps who made them. Your clinic's server judges each like any other record.</p>`}
    ${refused.length > 0 && html`<h3>Not taken</h3><${RowList} rows=${refused.map(placed)} />`}
    ${told.length > 0 && html`<h3>Taken in part</h3><${RowList} rows=${told.map(placed)} />`}
  </section>`;
}

/** @param {import('../../exchange/bundles.js').Row} row */
const placed = ({ place, resource, field, text, value, allowed }) => ({ place: `Entry ${place}, ${resource}${field ? `, ${field}` : ''}`, text, value, allowed });

/** @param {{count: number, isUndone: boolean, progress: string, faults: any[], undo: () => void}} props */
function Done({ count, isUndone, progress, faults, undo }) {
  return html`<${Frame} title=${isUndone ? 'Taken back' : 'Imported'} back="/exchange" next=${{ label: 'See the patients', to: '/patients' }}>
    <div class="stack wide">
      <${FaultList} faults=${faults} title="Not all of it was taken back. Press again to go on." />
      <p role="status"><strong>${isUndone ? 'What was imported no longer counts.' : `${countWords(count)} saved on this device.`}</strong> ${progress}</p>
      ${isUndone
        ? html`<p>It stays in the record, with the reason. Checks in theatre cannot be taken back.</p>`
        : html`<${Notice} level="note"><p>They are sent to the clinic like everything that is saved here. If this was the wrong file, take it back now.</p><//>
            <div class="buttons"><button type="button" class="button grave" onClick=${undo}>Undo this import</button></div>`}
    </div>
  <//>`;
}

/** @param {number} count */
const countWords = (count) => (count === 1 ? '1 record' : `${count} records`);
