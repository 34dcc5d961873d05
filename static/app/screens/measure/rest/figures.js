/** Several figures of the examination beside each other, each with its own pad. */
import { FigureField } from '../../../parts/figure-field/figure-field.js';
import { html } from '../../../vendor/preact.js';

/** @typedef {{field: string, label: string, range: import('./ranges.js').Range}} Told */

/** @param {{draft: any, figures: Told[], onNote: (fields: any) => void}} props */
export function Figures({ draft, figures, onNote }) {
  return html`<div class="figure-fields">
    ${figures.map(
      ({ field, label, range }) => html`<${FigureField} key=${field} label=${label} value=${draft[field]} range=${range} onChange=${(/** @type {number | null} */ value) => onNote({ [field]: value })} />`,
    )}
  </div>`;
}
