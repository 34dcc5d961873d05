/** Where a figure comes from, in words, wherever the figure is shown. A figure from memory carries a broken frame. */
import { html } from '../../vendor/preact.js';

/** @param {{of: {mark: string, source: string}}} props `mark` is one of the engine's marks, `source` its words */
export function Provenance({ of: { mark, source } }) {
  const unsure = mark === 'from memory, verify';
  return html`<p class="provenance"><span class=${unsure ? 'provenance-mark unsure' : 'provenance-mark'}>${mark}</span> ${source}</p>`;
}
