/** Plans whose examination is no longer what it was when they were made. */
import { Notice } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';
import { whyOutdated } from './line.js';
import { PlanLine } from './plan-line.js';

/** @param {{patient: string, plans: import('./line.js').Planned[], records: readonly import('../../store/envelope.js').LedgerRecord[]}} props */
export function Outdated({ patient, plans, records }) {
  if (plans.length === 0) return null;
  const heading = `outdated-${patient}`;
  return html`<section class="stack" aria-labelledby=${heading}>
    <h2 id=${heading}>No longer current</h2>
    ${plans.map(
      (planned) => html`<div class="card stack tight" key=${planned.plan.id}>
        <${Notice} level="caution"><p>${whyOutdated(records, planned.plan)} Do not operate by this plan.</p><//>
        <${PlanLine} patient=${patient} planned=${planned} />
      </div>`,
    )}
  </section>`;
}
