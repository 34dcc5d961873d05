/** What stands under the other entry of a person who was entered twice. Its links lead to that entry's own screens and cards. */
import { shortDateWords } from '../../parts/calendar/date.js';
import { Carried } from '../../parts/carried/carried.js';
import { operationsOf } from '../../planning/operations.js';
import { html } from '../../vendor/preact.js';
import { Conflict } from './conflict.js';
import { OperatedList } from './operated.js';
import { Outdated } from './outdated.js';
import { PlanLine } from './plan-line.js';
import { SittingCard } from './sitting-card.js';

/** @param {{line: import('./line.js').Line, records: readonly import('../../store/envelope.js').LedgerRecord[]}} props */
export function OtherEntry({ line, records }) {
  const { patient, sittings, alone, outdated, conflicts } = line;
  const { body, patient: id } = patient;
  const isEmpty = [sittings, alone, outdated].every((plans) => plans.length === 0);
  return html`<section class="stack" aria-label="Also entered as">
    <h2>Also entered as ${body.full_name}</h2>
    <p>Born ${shortDateWords(body.born_on)}, number <strong>${body.hospital_number}</strong>. <a href=${`#/patients/${id}`}>Open that entry</a></p>
    <${Carried} records=${records.filter((record) => record.patient === id)} />
    ${conflicts.map((conflict) => html`<${Conflict} key=${conflict.heads[0].id} kind=${conflict.kind} versions=${conflict.heads} />`)}
    <${OperatedList} patient=${id} operated=${operationsOf(records, id)} />
    ${alone.map((planned) => html`<div class="card" key=${planned.plan.id}><${PlanLine} patient=${id} planned=${planned} /></div>`)}
    ${sittings.map((sitting) => html`<${SittingCard} key=${sitting.examination.id} patient=${id} sitting=${sitting} />`)}
    <${Outdated} patient=${id} plans=${outdated} records=${records} />
    ${isEmpty && html`<p class="soft">Nothing measured under it.</p>`}
  </section>`;
}
