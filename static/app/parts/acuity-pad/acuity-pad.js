/** The visual acuity of one eye: one touch on the line that was read; a second touch takes it back. */
import { html } from '../../vendor/preact.js';
import { EYE_WORDS } from '../../words/anatomy.js';
import { ACUITIES } from './acuities.js';

/** @param {string} acuity read from the chart, rather than told in words */
const isFraction = (acuity) => acuity.includes('/');

/**
 * @param {object} props
 * @param {import('../../words/anatomy.js').Eye} props.eye
 * @param {string | null} props.value
 * @param {(value: string | null) => void} props.onChange
 */
export function AcuityPad({ eye, value, onChange }) {
  const key = (/** @type {string} */ acuity) => html`<button
    key=${acuity}
    type="button"
    class="key"
    aria-pressed=${String(acuity === value)}
    onClick=${() => onChange(acuity === value ? null : acuity)}
  >
    ${acuity}
  </button>`;
  return html`<fieldset class="acuity-pad">
    <legend><span class="side">${EYE_WORDS[eye]}</span>: <strong>${value ?? 'not measured'}</strong></legend>
    <div class="acuity-keys">${ACUITIES.filter(isFraction).map(key)}</div>
    <div class="acuity-keys acuity-low">${ACUITIES.filter((acuity) => !isFraction(acuity)).map(key)}</div>
  </fieldset>`;
}
