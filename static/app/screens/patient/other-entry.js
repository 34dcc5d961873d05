/** What stands under the other entry of a person who was entered twice. Its links lead to that entry's own screens and cards. */
import { shortDateWords } from '../../parts/calendar/date.js';
import { Carried } from '../../parts/carried/carried.js';
import { Notice } from '../../parts/notice/notice.js';
import { operationsOf } from '../../planning/operations.js';
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
  const differ = (body.allergies ?? '') !== (own?.allergies ?? '');
  return html`<section class="stack" aria-label="Also entered as">
    <h2>Also entered as ${body.full_name}</h2>
    <p>Born ${shortDateWords(body.born_on)}, number <strong>${body.hospital_number}</strong>. <a href=${`#/patients/${id}`}>Open that entry</a></p>
    ${differ &&
    html`<${Notice} level="caution">
      <p>The allergies differ. Under the other entry: <strong>${body.allergies || 'none entered'}</strong>. Here: <strong>${own?.allergies || 'none entered'}</strong>. A card carries those of its own entry alone: correct the details, so that both say the same.</p>
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
