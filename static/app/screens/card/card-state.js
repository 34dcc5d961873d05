/** Whether the engine has made this card again, and whether it still says the same. */
import { Notice } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';

/** @param {{state: string, faults: {code: string, text: string}[]}} props */
export function CardState({ state, faults }) {
  if (state === 'refused') {
    return html`<${Notice} level="stop">
      <p>This card does not fit its signed plan. Do not operate by it.</p>
      ${faults.map(({ code, text }) => html`<p key=${code}>${text}</p>`)}
    <//>`;
  }
  if (state === 'changed') {
    return html`<${Notice} level="caution"><p>The engine on this device makes this card differently from the one kept here. The new one is shown; compare the check word with the paper.</p><//>`;
  }
  if (state === 'kept') return html`<p class="small soft" role="status">As kept on this device. It is made again and compared when the engine is ready.</p>`;
  if (state === 'checked') return html`<p class="unseen" role="status">Made again by the engine: the same.</p>`;
  return null;
}
