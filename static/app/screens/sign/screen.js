/**
 * Signing a plan: its cautions one by one, the plan drawn again on a blank picture, and only when the drawing equals the
 * plan, the signature. The engine compares and signs; every step back keeps what was done.
 */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { go } from '../../shell/router.js';
import { mayWrite } from '../../planning/rights.js';
import { isVoid, signatureOf, standingOf } from '../../planning/standing.js';
import { session } from '../../session/session.js';
import { find, heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { AlreadySigned, NotStanding, SurgeonsOnly } from './closed.js';
import { SigningScreen } from './signing-screen.js';

/** @param {{patient: string, plan: string}} props ids */
export default function Sign({ patient: id, plan: planId }) {
  const all = useObservable(records);
  const { clinic } = useObservable(session);
  const [patient] = heads(all, 'patient', id);
  const plan = find(all, planId);
  if (!patient || !plan) {
    return html`<${Absent} what="This plan" patient=${patient?.body} step=${{ label: 'To the case', to: patient ? `/patients/${id}` : '/patients' }} />`;
  }
  const standing = standingOf(all, plan);
  const signature = signatureOf(all, plan);
  if (signature) return html`<${AlreadySigned} patient=${patient} signature=${signature} />`;
  if (isVoid(standing)) return html`<${NotStanding} patient=${patient} standing=${standing} />`;
  if (!mayWrite(clinic?.role, 'signature')) return html`<${SurgeonsOnly} patient=${patient} plan=${plan} role=${clinic?.role} />`;
  return html`<${SigningScreen} key=${planId} patient=${patient} plan=${plan} standing=${standing} onSigned=${(/** @type {string} */ signatureId) => go(`/patients/${id}/card/${signatureId}`, { replace: true })} />`;
}
