/**
 * A computed figure that answers *why*: touch it and read its steps and their sources.
 *
 *     <${Why} label="Right medial rectus, recess 5.5 mm" steps=${dose.steps}>5.5<span class="unit">mm</span><//>
 */
import { html, useState } from '../../vendor/preact.js';
import { Provenance } from '../provenance/provenance.js';
import { Sheet } from '../sheet/sheet.js';

/**
 * @param {object} props
 * @param {string} props.label the figure in words, as the screen reader says it and as the panel is headed
 * @param {{code: string, text: string, provenance: {mark: string, source: string}}[]} props.steps
 * @param {unknown} props.children the figure as shown
 */
export function Why({ label, steps, children }) {
  const [open, setOpen] = useState(false);
  return html`<span class="why-place">
    <button type="button" class="why" aria-haspopup="dialog" aria-label=${`${label}. Why?`} onClick=${() => setOpen(true)}>${children}</button>
    <${Sheet} open=${open} title=${label} onClose=${() => setOpen(false)}>
      <ol class="why-steps">
        ${steps.map(
          (step, index) => html`<li key=${`${step.code} ${index}`}>
            <p>${step.text}</p>
            <${Provenance} of=${step.provenance} />
          </li>`,
        )}
      </ol>
    <//>
  </span>`;
}
