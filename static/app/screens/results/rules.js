/** How everything was counted, each sentence with its source. */
import { Fold } from '../../parts/fold/fold.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';

/** @param {{rules: {code: string, text: string, provenance: {mark: string, source: string}}[]}} props */
export function Rules({ rules }) {
  return html`<${Fold} title="How this was counted" holds="Definitions, intervals, sources">
    <ul class="results-rules">
      ${rules.map(({ code, text, provenance }) => html`<li key=${code}><p>${text}</p><${Provenance} of=${provenance} /></li>`)}
    </ul>
  <//>`;
}
