/**
 * The operation record of a signed plan: written muscle by muscle, shown once it is there, corrected by a record that replaces it.
 */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { operationsBy } from '../../planning/operations.js';
import { piecesOf } from '../../planning/standing.js';
import { useRights } from '../../planning/use-rights.js';
import { find, heads } from '../../store/heads.js';
import { drafts, records } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { NotRecorded } from './not-recorded.js';
import { Recorded } from './recorded.js';
import { RecordingScreen } from './recording-screen.js';

/** @param {{patient: string, signature: string}} props ids */
export default function OperationRoute({ patient: id, signature: signatureId }) {
  const all = useObservable(records);
  const rights = useRights();
  const [patient] = heads(all, 'patient', id);
  const signature = find(all, signatureId);
  const pieces = signature && piecesOf(all, signature);
  const draftName = `operation/${signatureId}`;
  const [isCorrecting, setCorrecting] = useState(Boolean(drafts.get(draftName)?.corrected));
  const hasDraft = Boolean(drafts.get(draftName));
  if (!patient || !pieces) {
    return html`<${Absent} what="This operation" patient=${patient?.body} step=${{ label: 'To the case', to: patient ? `/patients/${id}` : '/patients' }} />`;
  }
  const operated = operationsBy(all, signature);
  const may = rights.write('operation');
  if (operated.length > 0 && !isCorrecting) {
    return html`<${Recorded} patient=${patient} pieces=${pieces} operated=${operated} hasDraft=${hasDraft} onCorrect=${may ? () => setCorrecting(true) : null} />`;
  }
  if (!may) return html`<${NotRecorded} patient=${patient} pieces=${pieces} role=${rights.role} />`;
  return html`<${RecordingScreen}
    key=${signatureId}
    patient=${patient}
    pieces=${pieces}
    draftName=${draftName}
    corrected=${isCorrecting ? operated.map(({ operation }) => operation) : []}
    onSaved=${() => setCorrecting(false)}
  />`;
}
