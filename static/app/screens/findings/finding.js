/** One finding: the sentence, how firmly it stands, what would settle it, and on a touch where it comes from. */
import { Strength } from '../../parts/strength/strength.js';
import { Why } from '../../parts/why/why.js';
import { html } from '../../vendor/preact.js';

/** @param {{finding: import('./groups.js').Finding}} props */
export function Finding({ finding }) {
  return html`<li class="finding">
    <div class="finding-said">
      <p class="finding-text">${finding.text} ${finding.strength && html`<${Strength} of=${finding.strength} />`}</p>
      ${finding.settle && html`<p class="finding-settle small"><strong>To settle it:</strong> ${finding.settle}</p>`}
    </div>
    <${Why} label=${finding.text} steps=${[finding]}>why<//>
  </li>`;
}
