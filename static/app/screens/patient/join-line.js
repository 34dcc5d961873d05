/** Who joined two entries, when and why, and the way to part them again. */
import { momentWords } from '../../parts/calendar/ago.js';
import { html } from '../../vendor/preact.js';
import { TakeBack } from './take-back.js';

/** @param {{join: import('../../store/envelope.js').LedgerRecord}} props */
export function JoinLine({ join }) {
  return html`<div class="join-line">
    <p class="small">Joined as one person by ${join.author}, ${momentWords(join.recorded_at)}: <span class="as-typed">${join.body.reason}</span></p>
    <${TakeBack} record=${join} what="this joining" />
  </div>`;
}
