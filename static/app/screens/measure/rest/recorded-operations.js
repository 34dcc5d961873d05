/** Muscles that this clinic operated before, by its own operation records: taken over in one touch. */
import { dateWords } from '../../../parts/calendar/date.js';
import { html } from '../../../vendor/preact.js';
import { isTaken, takenOver } from './taking-over.js';

/** @typedef {import('../examination.js').PastOperation} PastOperation */

/** @param {{earlier: import('./taking-over.js').Earlier[], operations: PastOperation[], onChange: (operations: PastOperation[]) => void}} props `earlier`: the engine's `EarlierMuscle`s */
export function RecordedOperations({ earlier, operations, onChange }) {
  if (earlier.length === 0) return null;
  const isAll = earlier.every((each) => isTaken(each, operations));
  return html`<section class="card stack tight" aria-label="From operation records">
    <h3>From operation records</h3>
    <ul class="recorded-operations">
      ${earlier.map((each, index) => html`<li key=${index}>${each.text} <span class="small soft">${dateWords(each.operated_on)}</span></li>`)}
    </ul>
    ${isAll
      ? html`<p class="small soft">Taken over into the previous operations.</p>`
      : html`<button type="button" class="button" onClick=${() => onChange(takenOver(earlier, operations))}>Take over ${earlier.length === 1 ? 'this muscle' : `these ${earlier.length} muscles`}</button>`}
  </section>`;
}
