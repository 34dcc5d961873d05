/**
 * What stands under the other entry of a person who was entered twice. Nothing is moved: each examination, plan and card keeps the
 * entry that it was made under, and shows it.
 */
import { joinsOf, membersOf } from '../../store/joined.js';
import { html } from '../../vendor/preact.js';
import { JoinLine } from './join-line.js';
import { lineOf } from './line.js';
import { OtherEntry } from './other-entry.js';

/** @param {{patient: string, records: readonly import('../../store/envelope.js').LedgerRecord[]}} props */
export function OnePerson({ patient, records }) {
  const others = membersOf(records, patient).filter((id) => id !== patient);
  if (others.length === 0) return null;
  const lines = others.flatMap((id) => lineOf(records, id) ?? []);
  return html`<div class="stack wide one-person">
    ${lines.map((line) => html`<${OtherEntry} key=${line.patient.patient} line=${line} records=${records} />`)}
    ${joinsOf(records, patient).map((join) => html`<${JoinLine} key=${join.id} join=${join} />`)}
  </div>`;
}
