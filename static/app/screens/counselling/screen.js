/** What a plan means, in plain words and in the patient's language, to show or to print. */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { signatureOf } from '../../planning/standing.js';
import { find } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { CounsellingScreen } from './counselling-screen.js';

/** @param {{patient: string, plan: string}} props ids */
export default function CounsellingRoute({ patient: id, plan: planId }) {
  const all = useObservable(records);
  const plan = find(all, planId);
  const patient = plan && find(all, plan.body.patient_id);
  if (!plan || !patient || plan.patient !== id) {
    return html`<${Absent} what="This plan" step=${{ label: 'To the case', to: `/patients/${id}` }} />`;
  }
  return html`<${CounsellingScreen} key=${planId} pieces=${{ patient, plan, signature: signatureOf(all, plan) }} />`;
}
