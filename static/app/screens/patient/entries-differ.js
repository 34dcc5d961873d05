/** What theatre must know, where the two entries of one person say it differently: above everything of the case. */
import { Notice } from '../../parts/notice/notice.js';
import { toldOtherwise } from '../../planning/told-otherwise.js';
import { heads } from '../../store/heads.js';
import { membersOf } from '../../store/joined.js';
import { html } from '../../vendor/preact.js';

/** @param {{patient: import('../../store/envelope.js').LedgerRecord, records: readonly import('../../store/envelope.js').LedgerRecord[]}} props `patient`: the details that this screen shows */
export function EntriesDiffer({ patient: { patient, body }, records }) {
  const others = membersOf(records, patient).flatMap((member) => (member === patient ? [] : heads(records, 'patient', member).slice(0, 1)));
  return others.map((other) => {
    const differences = toldOtherwise(body, other.body);
    if (differences.length === 0) return null;
    return html`<div class="entries-differ" key=${other.patient}>
      <${Notice} level="caution">
        <p>Also entered as ${other.body.full_name}, number ${other.body.hospital_number}, and the two differ:</p>
        <ul>
          ${differences.map((each) => html`<li key=${each.field}>${each.words}: there <strong>${each.other}</strong>, here <strong>${each.own}</strong></li>`)}
        </ul>
        <p>A card warns of what either entry says. Correct the details, so that both say the same.</p>
      <//>
    </div>`;
  });
}
