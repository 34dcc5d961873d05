/** The case as a line, newest examination first; what disturbs it stands above. */
import { Carried } from '../../parts/carried/carried.js';
import { html } from '../../vendor/preact.js';
import { Conflict } from './conflict.js';
import { Details } from './details.js';
import { operationsOf } from '../../planning/operations.js';
import { OperatedList } from './operated.js';
import { Outdated } from './outdated.js';
import { PlanLine } from './plan-line.js';
import { SittingCard } from './sitting-card.js';

/** @param {{line: import('./line.js').Line, records: readonly import('../../store/envelope.js').LedgerRecord[]}} props */
export function Home({ line, records }) {
  const { patient, sittings, alone, outdated, conflicts } = line;
  return html`<div class="stack wide">
    <${Carried} records=${records.filter((record) => record.patient === patient.patient)} />
    ${conflicts.map((conflict) => html`<${Conflict} key=${conflict.heads[0].id} kind=${conflict.kind} versions=${conflict.heads} />`)}
    <${OperatedList} patient=${patient.patient} operated=${operationsOf(records, patient.patient)} />
    ${alone.length > 0 && html`<${Alone} patient=${patient.patient} plans=${alone} />`}
    <section class="stack" aria-labelledby="examinations">
      <h2 id="examinations">Examinations</h2>
      ${sittings.length === 0 &&
      html`<p class="soft">
        ${alone.length > 0
          ? 'This device is given signed plans, not the examinations they were made from.'
          : 'Nothing measured yet. One reading is enough to begin: the primary position at distance.'}
      </p>`}
      ${sittings.map((sitting) => html`<${SittingCard} key=${sitting.examination.id} patient=${patient.patient} sitting=${sitting} />`)}
    </section>
    <${Outdated} patient=${patient.patient} plans=${outdated} records=${records} />
    <${Details} patient=${patient} />
  </div>`;
}

/** @param {{patient: string, plans: import('./line.js').Planned[]}} props */
function Alone({ patient, plans }) {
  return html`<section class="stack" aria-labelledby="plans">
    <h2 id="plans">Plans</h2>
    ${plans.map((planned) => html`<div class="card" key=${planned.plan.id}><${PlanLine} patient=${patient} planned=${planned} /></div>`)}
  </section>`;
}
