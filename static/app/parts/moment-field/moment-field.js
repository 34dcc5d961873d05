/** A day and time, with the present moment in one touch; stored with the device's offset. */
import { localTime } from '../../store/envelope.js';
import { html } from '../../vendor/preact.js';

/**
 * @param {object} props
 * @param {string} props.label
 * @param {string} props.name
 * @param {string | null} props.value ISO 8601 with offset
 * @param {(value: string | null) => void} props.onChange
 */
export function MomentField({ label, name, value, onChange }) {
  /** @param {Event} event */
  const take = (event) => {
    const typed = /** @type {HTMLInputElement} */ (event.currentTarget).value;
    onChange(typed ? localTime(new Date(typed)) : null);
  };
  return html`<div class="moment-field">
    <label class="field-label" for=${name}>${label}</label>
    <div class="moment-row">
      <input class="input" type="datetime-local" id=${name} name=${name} value=${value ? localTime(new Date(value)).slice(0, 16) : ''} onChange=${take} />
      <button type="button" class="button" aria-label=${`${label}: now`} onClick=${() => onChange(localTime(new Date()))}>Now</button>
      ${value && html`<button type="button" class="button bare" aria-label=${`${label}: take out`} onClick=${() => onChange(null)}>Take out</button>`}
    </div>
  </div>`;
}
