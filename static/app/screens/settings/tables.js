/** Which dose table a new proposal starts from, with the words of each table about itself. */
import { engineState } from '../../engine/engine.js';
import { useObservable } from '../../observable.js';
import { Choice } from '../../parts/choice/choice.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { setUsualTable, startingTable, usualTable } from '../../planning/usual-table.js';
import { html } from '../../vendor/preact.js';
import { useAbout } from './use-about.js';

export function Tables() {
  const about = useAbout();
  const { phase, text } = useObservable(engineState);
  const chosen = useObservable(usualTable);
  const tables = about?.tables ?? [];
  const usual = startingTable(tables, chosen)?.id;
  return html`<section class="stack" lang="en" dir="ltr" aria-labelledby="tables">
    <h2 id="tables">Dose table</h2>
    ${tables.length === 0 && html`<p class="soft" role="status">${phase === 'failed' ? text : 'The tables are listed when the engine is ready.'}</p>`}
    ${tables.length > 0 &&
    html`<${Choice} legend="A new proposal starts from" name="table" options=${tables.map(({ id, name }) => ({ value: id, words: name }))} value=${usual} onChange=${setUsualTable} />`}
    ${tables.map(
      ({ id, name, provenance, caution }) => html`<div key=${id}>
        <h3>${name}</h3>
        <${Provenance} of=${provenance} />
        ${caution && html`<p class="small soft">${caution}</p>`}
      </div>`,
    )}
  </section>`;
}
