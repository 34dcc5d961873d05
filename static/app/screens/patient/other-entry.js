/** What stands under the other entry of a person who was entered twice. Its links lead to that entry's own screens and cards. */
import { shortDateWords } from '../../parts/calendar/date.js';
import { Carried } from '../../parts/carried/carried.js';
import { Notice } from '../../parts/notice/notice.js';
import { operationsOf } from '../../planning/operations.js';
import { toldOtherwise } from '../../planning/told-otherwise.js';
import { html } from '../../vendor/preact.js';
import { Conflict } from './conflict.js';
import { OperatedList } from './operated.js';
import { Outdated } from './outdated.js';
import { PlanLine } from './plan-line.js';
import { SittingCard } from './sitting-card.js';

/** @param {{line: import('./line.js').Line, own: any, records: readonly import('../../store/envelope.js').LedgerRecord[]}} props `own`: the details that this screen shows */
export function OtherEntry({ line, own, records }) {
  const { patient, sittings, alone, outdated, conflicts } = line;
  const { body, patient: id } = patient;
  const isEmpty = [sittings, alone, outdated].every((plans) => plans.length === 0);
  const differences = toldOtherwise(own, body);
  return html`<section class="stack" aria-label="Also entered as">
    <h2>Also entered as ${body.full_name}</h2>
    <p>Born ${shortDateWords(body.born_on)}, number <strong>${body.hospital_number}</strong>. <a href=${`#/patients/${id}`}>Open that entry</a></p>
    ${differences.length > 0 &&
    html`<${Notice} level="caution">
      <p>The two entries differ in what theatre must know. A card carries what its own entry says: correct the details, so that both say the same.</p>
      <ul>
        ${differences.map((each) => html`<li key=${each.field}>${each.words}: under the other entry <strong>${each.other}</strong>, here <strong>${each.own}</strong>.</li>`)}
      </ul>
    <//>`}
    <${Carried} records=${records.filter((record) => record.patient === id)} />
    ${conflicts.map((conflict) => html`<${Conflict} key=${conflict.heads[0].id} kind=${conflict.kind} versions=${conflict.heads} />`)}
    <${OperatedList} patient=${id} operated=${operationsOf(records, id)} />
    ${alone.map((planned) => html`<div class="card" key=${planned.plan.id}><${PlanLine} patient=${id} planned=${planned} /></div>`)}
    ${sittings.map((sitting) => html`<${SittingCard} key=${sitting.examination.id} patient=${id} sitting=${sitting} />`)}
    <${Outdated} patient=${id} plans=${outdated} records=${records} />
    ${isEmpty && html`<p class="soft">Nothing measured under it.</p>`}
  </section>`;
}
