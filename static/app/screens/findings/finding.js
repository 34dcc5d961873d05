/** One finding: the sentence, and on a touch where it comes from. */
import { Why } from '../../parts/why/why.js';
import { html } from '../../vendor/preact.js';

/** How firmly it stands, where that is not beyond doubt. @type {Record<string, string>} */
const STRENGTH_WORDS = { borderline: 'Borderline: within measurement error of not being so.', 'cannot tell': 'The readings cannot tell.' };

/** @param {{finding: {code: string, text: string, provenance: {mark: string, source: string}, strength?: string, settle?: string}}} props */
export function Finding({ finding }) {
  return html`<li class="finding">
    <div class="finding-said">
      <p class="finding-text">${finding.text}</p>
      ${finding.strength && STRENGTH_WORDS[finding.strength] && html`<p class="finding-strength">${STRENGTH_WORDS[finding.strength]}</p>`}
      ${finding.settle && html`<p class="small soft">${finding.settle}</p>`}
    </div>
    <${Why} label=${finding.text} steps=${[finding]}>why<//>
  </li>`;
}
