/** What stands under the other entry of a person who was entered twice. Its links lead to that entry's own screens and cards. */
import { Notice } from '../../parts/notice/notice.js';
import { shortDateWords } from '../../parts/calendar/date.js';
import { html } from '../../vendor/preact.js';
import { PlanLine } from './plan-line.js';
import { SittingCard } from './sitting-card.js';

/** @param {{line: import('./line.js').Line, own: any}} props `own`: the details that this screen shows */
export function OtherEntry({ line, own }) {
  const { patient, sittings, alone } = line;
  const { body, patient: id } = patient;
  const differ = (body.allergies ?? '') !== (own?.allergies ?? '');
  return html`<section class="stack" aria-label="Also entered as">
    <h2>Also entered as ${body.full_name}</h2>
    <p>Born ${shortDateWords(body.born_on)}, number <strong>${body.hospital_number}</strong>. <a href=${`#/patients/${id}`}>Open that entry</a></p>
    ${differ &&
    html`<${Notice} level="caution">
      <p>The allergies differ. Under the other entry: <strong>${body.allergies || 'none entered'}</strong>. Here: <strong>${own?.allergies || 'none entered'}</strong>. A card carries those of its own entry alone: correct the details, so that both say the same.</p>
    <//>`}
    ${alone.map((planned) => html`<div class="card" key=${planned.plan.id}><${PlanLine} patient=${id} planned=${planned} /></div>`)}
    ${sittings.map((sitting) => html`<${SittingCard} key=${sitting.examination.id} patient=${id} sitting=${sitting} />`)}
    ${sittings.length === 0 && alone.length === 0 && html`<p class="soft">Nothing measured under it.</p>`}
  </section>`;
}
