/** The plans that cannot be signed here: signed already, no longer current, or in other hands than a surgeon's. */
import { momentWords } from '../../parts/calendar/ago.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';
import { PlanShown } from './plan-shown.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @param {{patient: LedgerRecord, signature: LedgerRecord}} props */
export function AlreadySigned({ patient, signature }) {
  const home = `/patients/${patient.patient}`;
  return html`<${Frame} title="Signed" patient=${patient.body} back=${home} next=${{ label: 'Open the card', to: `${home}/card/${signature.id}` }}>
    <p>${signature.body.signer_name} signed this plan on ${momentWords(signature.body.signed_at)}.</p>
  <//>`;
}

/** @param {{patient: LedgerRecord, standing: import('../../planning/standing.js').Standing}} props */
export function NotStanding({ patient, standing }) {
  const home = `/patients/${patient.patient}`;
  const [successor] = standing.successors;
  const next = successor ? { label: 'To the current plan', to: `${home}/sign/${successor.id}` } : { label: 'To the case', to: home };
  return html`<${Frame} title="Not current" patient=${patient.body} back=${home} next=${next}>
    <${Notice} level="stop">
      ${standing.retraction ? html`<p>This plan was taken back: ${standing.retraction.body.reason}</p>` : html`<p>Another plan has replaced this one.</p>`}
    <//>
  <//>`;
}

/** @param {{patient: LedgerRecord, plan: LedgerRecord, role?: string}} props */
export function SurgeonsOnly({ patient, plan, role }) {
  return html`<${Frame} title="The plan" patient=${patient.body} back=${`/patients/${patient.patient}`}>
    <div class="stack">
      <${PlanShown} plan=${plan} />
      <${Notice} level="note">
        <p>Only an account with the role surgeon can sign a plan. Yours in this clinic is ${role ?? 'not known'}. The plan is saved; the surgeon finds it in the case.</p>
      <//>
    </div>
  <//>`;
}
