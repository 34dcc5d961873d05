/** One caution at a time, to be read before the next. */
import { Notice } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';

/** @param {{caution: any, number: number, count: number}} props */
export function Caution({ caution, number, count }) {
  return html`<div class="stack">
    <p class="soft">Caution ${number} of ${count}. Each is printed on the card.</p>
    <${Notice} level="caution" provenance=${caution.provenance}><p class="caution-text">${caution.text}</p><//>
  </div>`;
}
