/** The person of a card may stand in the records twice: what the other entry warns of, the card itself does not carry. */
import { useObservable } from '../../observable.js';
import { Notice } from '../../parts/notice/notice.js';
import { toldOtherwise } from '../../planning/told-otherwise.js';
import { heads } from '../../store/heads.js';
import { membersOf } from '../../store/joined.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';

/** @param {{patient: import('../../store/envelope.js').LedgerRecord}} props the present record of the card's entry */
export function OtherEntry({ patient: { patient, body } }) {
  const all = useObservable(records);
  const others = membersOf(all, patient).flatMap((member) => (member === patient ? [] : heads(all, 'patient', member).slice(0, 1)));
  return others.map((other) => {
    const warnings = toldOtherwise(body, other.body).filter(({ isWarning }) => isWarning);
    if (warnings.length === 0) return null;
    return html`<${Notice} key=${other.patient} level="caution">
      <p>This person was entered twice. Not on this card, from the entry ${other.body.full_name}, number ${other.body.hospital_number}:</p>
      <ul>${warnings.map((each) => html`<li key=${each.field}>${each.words}: <strong>${each.other}</strong></li>`)}</ul>
      <p>Ask before you begin.</p>
    <//>`;
  });
}
