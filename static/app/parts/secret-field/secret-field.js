/** A PIN or passphrase, hidden unless one asks to see it. */
import { describedBy, FieldFault } from '../field/field.js';
import { html, useState } from '../../vendor/preact.js';
import { sayHere } from '../../words/say.js';

/**
 * @param {object} props
 * @param {string} props.label
 * @param {string} props.name
 * @param {'pin' | 'passphrase'} props.kind which keyboard the phone offers
 * @param {'new-password' | 'current-password'} props.purpose
 * @param {string} props.value
 * @param {(value: string) => void} props.onInput
 * @param {{text: string, allowed?: string}} [props.fault]
 */
export function SecretField({ label, name, kind, purpose, value, onInput, fault }) {
  const [seen, setSeen] = useState(false);
  return html`<div class="field">
    <label class="field-label" for=${name}>${label}</label>
    <div class="secret-row">
      <input
        class="input secret-input"
        id=${name}
        type=${seen ? 'text' : 'password'}
        inputmode=${kind === 'pin' ? 'numeric' : 'text'}
        autocomplete=${purpose}
        autocapitalize="none"
        autocorrect="off"
        spellcheck=${false}
        value=${value}
        onInput=${(event) => onInput(event.currentTarget.value)}
        ...${describedBy(name, { fault })}
      />
      <button type="button" class="button" aria-pressed=${String(seen)} onClick=${() => setSeen(!seen)}>${sayHere('Show')}<span class="unseen"> ${label}</span></button>
    </div>
    <${FieldFault} name=${name} fault=${fault} />
  </div>`;
}
