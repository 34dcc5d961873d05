/** In other hands than a surgeon's, before a record is there. */
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { TheatreWayNav } from '../../parts/theatre-way/theatre-way.js';
import { html } from '../../vendor/preact.js';

/** @param {{patient: import('../../store/envelope.js').LedgerRecord, pieces: import('../../planning/kept-cards.js').Pieces, role?: string}} props */
export function NotRecorded({ patient, pieces, role }) {
  const home = `/patients/${patient.patient}`;
  return html`<${Frame} title="Operation record" patient=${patient.body} back=${home} next=${{ label: 'Open the card', to: `${home}/card/${pieces.signature.id}` }}>
    <div class="theatre stack">
      <${TheatreWayNav} pieces=${pieces} here="operation" />
      <${Notice} level="note"><p>Nothing is recorded yet. Only an account with the role surgeon writes what was done; yours in this clinic is ${role ?? 'not known'}.</p><//>
    </div>
  <//>`;
}
