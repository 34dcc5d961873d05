/** A stop before anything else, with every difference in words. */
import { Notice } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';

/** @param {{text: string, differences?: string[]}} props */
export function StopShown({ text, differences = [] }) {
  return html`<${Notice} level="stop">
    <p class="check-stop-words">${text}</p>
    ${differences.length > 0 && html`<ul class="stack tight">${differences.map((each) => html`<li key=${each}>${each}</li>`)}</ul>`}
  <//>`;
}
