/** Records to and from other systems: the way to each, an export of one patient or of all, and an import. */
import { useObservable } from '../../observable.js';
import { Empty } from '../../parts/empty/empty.js';
import { Frame } from '../../parts/frame/frame.js';
import { useRights } from '../../planning/use-rights.js';
import { heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { Give } from './give.js';
import { Take } from './take.js';

/** @param {{patient?: string, way?: string}} props `way`: `all` or `import`; a patient's id exports that patient */
export default function Exchange({ patient: id, way }) {
  const all = useObservable(records);
  const may = useRights().write('examination');
  if (!may) return html`<${NotHere} />`;
  if (way === 'import') return html`<${Take} />`;
  if (way === 'all') return html`<${Give} which=${all} what="All that is on this device" withCards=${false} back="/exchange" />`;
  if (way) return html`<${Frame} title="Not found" back="/exchange"><${Empty} title="There is nothing here" step=${{ label: 'Exchange', to: '/exchange' }} /><//>`;
  if (!id) return html`<${Ways} />`;
  const body = heads(all, 'patient', id)[0]?.body;
  return html`<${Give} which=${all.filter(({ patient }) => patient === id)} patient=${body} what="All that is known of this patient" withCards=${true} back=${`/patients/${id}`} />`;
}

function Ways() {
  const { write } = useRights();
  return html`<${Frame} title="Exchange" back="/settings">
    <div class="stack wide">
      <section class="card stack" aria-labelledby="fhir">
        <h2 id="fhir">With other systems, as FHIR</h2>
        <p>HL7 FHIR R4 is an open format for health records. One patient is exported from the case.</p>
        <div class="buttons">
          <a class="button" href="#/exchange/import">Import a file</a>
          <a class="button" href="#/exchange/all">Export all</a>
        </div>
      </section>
      ${write('notebook') &&
      html`<section class="card stack" aria-labelledby="old-cases">
        <h2 id="old-cases">Your old cases</h2>
        <p>Last year's notebook as a table, so that your own results do not begin with nothing.</p>
        <div class="buttons"><a class="button" href="#/notebook">Old cases from a notebook</a></div>
      </section>`}
    </div>
  <//>`;
}

function NotHere() {
  return html`<${Frame} title="Exchange" back="/settings">
    <${Empty} title="Not for this role" step=${{ label: 'Settings', to: '/settings' }}><p>Surgeons and the clinic's own staff exchange records with other systems.</p><//>
  <//>`;
}
