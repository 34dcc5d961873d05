/** What speaks for and against, strongest first, as the engine orders them. */
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';

/** @typedef {{code: string, text: string, provenance: {mark: string, source: string}}} Statement */

/**
 * @param {object} props
 * @param {Statement[]} props.reasonsFor
 * @param {Statement[]} props.reasonsAgainst
 * @param {number} [props.strongest] how many of each; all of them, with their sources, when not given
 */
export function Reasons({ reasonsFor, reasonsAgainst, strongest }) {
  return html`<div class="reasons">
    <${Side} word="For" reasons=${reasonsFor} strongest=${strongest} />
    <${Side} word="Against" reasons=${reasonsAgainst} strongest=${strongest} />
  </div>`;
}

/** @param {{word: string, reasons: Statement[], strongest?: number}} props */
function Side({ word, reasons, strongest }) {
  const shown = reasons.slice(0, strongest);
  return html`<div class=${`reasons-side reasons-${word.toLowerCase()}`}>
    <h3 class="reasons-word">${word}</h3>
    ${shown.length === 0 && html`<p class="small soft">nothing of its own</p>`}
    <ul class="reasons-list">
      ${shown.map(
        (reason, index) => html`<li key=${`${reason.code} ${index}`}>
          ${reason.text} ${strongest === undefined && html`<${Provenance} of=${reason.provenance} />`}
        </li>`,
      )}
    </ul>
    ${reasons.length > shown.length && html`<p class="small soft">${reasons.length - shown.length} more inside</p>`}
  </div>`;
}
