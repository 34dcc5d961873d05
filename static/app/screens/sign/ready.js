/** Drawing and plan are equal: what is about to be signed, by whom, and what the signature means. */
import { Notices } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';
import { PlanShown } from './plan-shown.js';

/** @param {{plan: import('../../store/envelope.js').LedgerRecord, signer: string}} props */
export function Ready({ plan, signer }) {
  return html`<div class="ready">
    <${PlanShown} plan=${plan} />
    <div class="stack">
      <p><strong>Your drawing equals the plan.</strong></p>
      <${Notices} notices=${plan.body.option.notices} />
      <p>Signing as <strong>${signer}</strong>. The signed plan is frozen; a change is a new plan with a new signature.</p>
    </div>
  </div>`;
}
