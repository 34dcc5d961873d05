/** One finding: the sentence, and on a touch where it comes from. */
import { Why } from '../../parts/why/why.js';
import { html } from '../../vendor/preact.js';

/** @param {{finding: {code: string, text: string, provenance: {mark: string, source: string}}}} props */
export function Finding({ finding }) {
  return html`<li class="finding">
    <p class="finding-text">${finding.text}</p>
    <${Why} label=${finding.text} steps=${[finding]}>why<//>
  </li>`;
}
