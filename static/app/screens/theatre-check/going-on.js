/** A stop that the surgeon alone may pass over, by name and with a reason that is kept. */
import { Field } from '../../parts/field/field.js';
import { html } from '../../vendor/preact.js';
import { StopShown } from './stop-shown.js';

/**
 * @param {object} props
 * @param {any} props.stop of the engine
 * @param {Record<string, any>} props.held
 * @param {(held: Record<string, any>) => void} props.onHold
 */
export function GoingOn({ stop, held, onHold }) {
  return html`<div class="theatre check stack">
    <${StopShown} text=${stop.text} differences=${stop.differences} />
    <p class="check-do">The check stops here, unless the surgeon goes on. The reason is kept with the check.</p>
    <div class="check-typed stack">
      <${Field} label="The surgeon’s name" name="surgeon" value=${held.surgeon ?? ''} onInput=${(/** @type {string} */ surgeon) => onHold({ ...held, surgeon })} />
      <${Field} label="Why the operation goes on" name="reason" rows=${2} value=${held.reason ?? ''} onInput=${(/** @type {string} */ reason) => onHold({ ...held, reason })} />
    </div>
  </div>`;
}
