/** What was measured at the visit, and the way to measure, with the same screens as before surgery. */
import { html } from '../../vendor/preact.js';
import { mainReadings } from '../patient/readings.js';

/** @param {{examination?: import('../../store/envelope.js').LedgerRecord, correct?: string, measure: string | null}} props routes */
export function Measured({ examination, correct, measure }) {
  return html`<section class="card stack tight" aria-label="Measured">
    <h2>Measured</h2>
    ${examination
      ? html`<dl class="reading-tiles">
            ${mainReadings(examination.body.readings).map((reading) => html`<div class="reading-tile" key=${reading.label}><dt>${reading.label}</dt><dd>${reading.words}</dd></div>`)}
          </dl>
          <div class="buttons"><a class="button" href=${`#${correct}`}>Correct or add</a></div>`
      : html`<p class="soft">Nothing yet. It is measured as before surgery; movements of the operated muscles belong to it.</p>
          ${measure && html`<div class="buttons"><a class="button" href=${`#${measure}`}>Measure after all</a></div>`}`}
  </section>`;
}
