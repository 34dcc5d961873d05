/** In other hands than a surgeon's, before a record is there. */
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';

/** @param {{patient: import('../../store/envelope.js').LedgerRecord, signature: import('../../store/envelope.js').LedgerRecord, role?: string}} props */
export function NotRecorded({ patient, signature, role }) {
  const home = `/patients/${patient.patient}`;
  return html`<${Frame} title="Operation record" patient=${patient.body} back=${home} next=${{ label: 'Open the card', to: `${home}/card/${signature.id}` }}>
    <${Notice} level="note"><p>Nothing is recorded yet. Only an account with the role surgeon writes what was done; yours in this clinic is ${role ?? 'not known'}.</p><//>
  <//>`;
}
