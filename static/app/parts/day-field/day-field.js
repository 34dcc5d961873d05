/** A day to come, chosen with the device's own calendar and read back with the month spelt. */
import { html } from '../../vendor/preact.js';
import { dateWords } from '../calendar/date.js';
import { describedBy, FieldFault } from '../field/field.js';

/** @param {{label: string, name: string, value: string, onInput: (value: string) => void, fault?: {text: string, allowed?: string}}} props */
export function DayField({ label, name, value, onInput, fault }) {
  return html`<div class="field">
    <label class="field-label" for=${name}>${label}</label>
    <input
      class="input"
      type="date"
      id=${name}
      name=${name}
      value=${value}
      min="2020-01-01"
      max="2199-12-31"
      onInput=${(/** @type {any} */ event) => event.currentTarget.value && onInput(event.currentTarget.value)}
      ...${describedBy(name, { fault, hint: 'words' })}
    />
    <p class="field-hint" id=${`${name}-hint`}>${dateWords(value)}</p>
    <${FieldFault} name=${name} fault=${fault} />
  </div>`;
}
