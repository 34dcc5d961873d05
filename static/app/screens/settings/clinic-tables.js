/** The clinic's own dose tables: which there are, and a new one from a file, read and judged by the engine before it is taken. */
import { ask } from '../../engine/engine.js';
import { useObservable } from '../../observable.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { listedTable } from '../../planning/clinic-tables.js';
import { faultsIn } from '../../planning/use-answer.js';
import { useRights } from '../../planning/use-rights.js';
import { heads } from '../../store/heads.js';
import { records, saveRecord } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

export function ClinicTables() {
  const current = heads(useObservable(records), 'dose_table');
  const { write } = useRights();
  const [read, setRead] = useState(/** @type {any} */ (null));
  const [faults, setFaults] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));
  const replaced = current.find(({ body }) => body.id === read?.id);

  /** @param {() => Promise<void>} work */
  const during = (work) => work().catch((error) => setFaults(faultsIn(error).map(placed)));

  /** @param {HTMLInputElement} input */
  const open = (input) =>
    during(async () => {
      setRead(null);
      setFaults([]);
      const [file] = input.files ?? [];
      if (file) setRead(await ask('read_table', { text: await file.text() }));
      input.value = '';
    });

  const take = () =>
    during(async () => {
      await saveRecord('dose_table', { patient: replaced?.patient, supersedes: replaced ? [replaced.id] : [], body: read });
      setRead(null);
    });

  return html`<section class="stack" lang="en" dir="ltr" aria-labelledby="own-tables">
    <h2 id="own-tables">The clinic's own dose tables</h2>
    ${current.length === 0 ? html`<p class="soft">None yet.</p>` : current.map((record) => html`<${Told} key=${record.id} body=${record.body} />`)}
    <${FaultList} faults=${faults} title="This table is not taken." />
    ${read &&
    html`<div class="card stack">
      <${Told} body=${read} />
      <p class="small">${read.esotropia.length} rows for esotropia, ${read.exotropia.length} for exotropia. ${read.origin.validity}</p>
      ${replaced && html`<p>It replaces the table of the same id. Plans that are signed keep the one they were made from.</p>`}
      <div class="buttons">
        <button type="button" class="button main" onClick=${take}>${replaced ? 'Replace the table' : 'Take this table'}</button>
        <button type="button" class="button" onClick=${() => setRead(null)}>Leave it</button>
      </div>
    </div>`}
    ${write('dose_table')
      ? html`<label class="field">
          <span class="field-label">A table from a file</span>
          <span class="field-hint">TOML or JSON, with where its figures come from. A mistake is named with its row.</span>
          <input class="input" type="file" accept=".toml,.json,text/plain,application/json" onChange=${(/** @type {any} */ event) => open(event.currentTarget)} />
        </label>`
      : html`<p class="small soft">A surgeon of the clinic adds or replaces them.</p>`}
  </section>`;
}

/** With its place in the file, such as `esotropia.3.both_recess_mm`. @param {import('../../planning/use-answer.js').FaultFacts} fault */
const placed = (fault) => ({ ...fault, text: fault.field ? `${fault.field}: ${fault.text}` : fault.text });

/** @param {{body: any}} props of a `dose_table` record */
function Told({ body }) {
  const { name, caution, provenance } = listedTable(body);
  return html`<div>
    <h3>${name}</h3>
    <${Provenance} of=${provenance} />
    <p class="small soft">${caution}</p>
  </div>`;
}
