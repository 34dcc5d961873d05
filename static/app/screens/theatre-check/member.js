/** Somebody who goes through a check names themself and says what they are in theatre. */
import { Choice } from '../../parts/choice/choice.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Field } from '../../parts/field/field.js';
import { html } from '../../vendor/preact.js';

const ROLES = [
  { value: 'nurse', words: 'Nurse' },
  { value: 'anaesthetist', words: 'Anaesthetist' },
  { value: 'surgeon', words: 'Surgeon' },
];

/**
 * @param {object} props
 * @param {string} props.say who is meant, and what this person will do
 * @param {Record<string, any>} props.held
 * @param {import('../../planning/use-answer.js').FaultFacts[]} props.faults
 * @param {(held: Record<string, any>) => void} props.onHold
 */
export function MemberEntry({ say, held, faults, onHold }) {
  return html`<div class="theatre check stack">
    <p class="check-do">${say}</p>
    <${FaultList} faults=${faults} title="Two people go through a check." />
    <div class="check-typed">
      <${Field} label="Your full name" name="member-name" value=${held.name ?? ''} onInput=${(/** @type {string} */ name) => onHold({ ...held, name })} input=${{ autocapitalize: 'words', spellcheck: false }} />
    </div>
    <${Choice} legend="Here you are" name="member-role" options=${ROLES} value=${held.role} onChange=${(/** @type {string} */ role) => onHold({ ...held, role })} />
  </div>`;
}
