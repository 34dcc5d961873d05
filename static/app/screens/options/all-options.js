/** All options: the table first, then principles, what goes together, the horizontal options, and what may be done beside them. */
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Frame } from '../../parts/frame/frame.js';
import { html } from '../../vendor/preact.js';
import { Newer } from '../findings/newer.js';
import { Aims } from './aims.js';
import { Offered } from './offered.js';
import { TableChoice } from './table-choice.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @param {{patient: LedgerRecord, examination: LedgerRecord, weighed: ReturnType<typeof import('../../planning/use-planning.js').usePlanning>}} props */
export function AllOptions({ patient, examination, weighed }) {
  const { proposal, planning, tables, table, faults, set, ownOf } = weighed;
  const home = `/patients/${patient.patient}`;
  const hasOwn = planning.combine.length + planning.changes.length > 0;
  return html`<${Frame} title="Options" patient=${patient.body} back=${`${home}/findings/${examination.id}`} layout="wide">
    <div class="stack">
      <${Newer} examination=${examination} screen="options" />
      <${TableChoice} tables=${tables} chosen=${table} onChoose=${(/** @type {string} */ id) => set({ table: id })} />
      <${Aims} planning=${planning} examination=${examination.body} onSet=${set} />
      ${proposal && faults.length === 0
        ? html`<${Offered} proposal=${proposal} planning=${planning} onSet=${set} ownOf=${ownOf} pathOf=${(/** @type {string} */ id) => `${home}/options/${examination.id}/${id}`} />`
        : html`<${EngineWait} faults=${faults} />
            ${faults.length > 0 && hasOwn && html`<div class="buttons"><button type="button" class="button" onClick=${() => set({ combine: [], changes: [] })}>Take back what goes together and every changed figure</button></div>`}`}
    </div>
  <//>`;
}
