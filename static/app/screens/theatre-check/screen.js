/** The checks in theatre of a signed card: sign in, time out, sign out. Each is kept as a draft at every touch. */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { piecesOf } from '../../planning/standing.js';
import { find, heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { ChecksScreen } from './checks-screen.js';

/** @param {{patient: string, signature: string}} props ids */
export default function TheatreCheck({ patient: id, signature: signatureId }) {
  const all = useObservable(records);
  const [patient] = heads(all, 'patient', id);
  const signature = find(all, signatureId);
  const pieces = signature && piecesOf(all, signature);
  if (!patient || !pieces) {
    return html`<${Absent} what="This card" patient=${patient?.body} step=${{ label: 'To the case', to: patient ? `/patients/${id}` : '/patients' }} />`;
  }
  return html`<${ChecksScreen} key=${signatureId} patient=${patient} pieces=${pieces} />`;
}
