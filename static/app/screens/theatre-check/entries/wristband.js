/** The number and, the first time, the date of birth, typed from the wristband. */
import { DateDigits } from '../../../parts/date-digits/date-digits.js';
import { Field } from '../../../parts/field/field.js';
import { html } from '../../../vendor/preact.js';

/** @param {{step: any, held: Record<string, any>, onHold: (held: Record<string, any>) => void}} props */
export function WristbandEntry({ step, held, onHold }) {
  const areDigits = step.keys === 'digits';
  return html`<div class="check-typed stack">
    <${Field}
      label="Hospital number on the wristband"
      hint=${areDigits ? 'Its digits are enough.' : 'The whole number, with its letters.'}
      name="hospital-number"
      value=${held.hospital_number ?? ''}
      onInput=${(/** @type {string} */ hospital_number) => onHold({ ...held, hospital_number })}
      input=${areDigits ? { inputmode: 'numeric' } : { autocapitalize: 'characters', spellcheck: false }}
    />
    ${step.way === 'wristband' &&
    html`<${DateDigits} legend="Date of birth on the wristband" name="born-on" value=${held.born_on ?? ''} onInput=${(/** @type {string} */ born_on) => onHold({ ...held, born_on })} />`}
  </div>`;
}
