/** What was measured at the visit, and the way to measure, with the same screens as before surgery. */
import { html } from '../../vendor/preact.js';
import { mainReadings } from '../patient/readings.js';

/**
 * @param {object} props
 * @param {import('../../store/envelope.js').LedgerRecord} [props.examination]
 * @param {string} props.measure the route
 * @param {boolean} props.unmeasured it is said that nothing was measured
 * @param {() => void} props.onUnmeasured
 */
export function Measured({ examination, measure, unmeasured, onUnmeasured }) {
  return html`<section class="card stack tight" aria-label="Measured">
    <h2>Measured</h2>
    ${examination
      ? html`<dl class="reading-tiles">
            ${mainReadings(examination.body.readings).map((reading) => html`<div class="reading-tile" key=${reading.label}><dt>${reading.label}</dt><dd>${reading.words}</dd></div>`)}
          </dl>
          <div class="buttons"><a class="button" href=${`#${measure}/${examination.id}`}>Correct or add</a></div>`
      : html`<p class="soft">${unmeasured ? 'Nothing was measured at this visit.' : 'Nothing yet. It is measured as before surgery; movements of the operated muscles belong to it.'}</p>
          <div class="buttons">
            ${unmeasured
              ? html`<a class="button" href=${`#${measure}`}>Measure after all</a>`
              : html`<button type="button" class="button bare" onClick=${onUnmeasured}>Nothing is measured this time</button>`}
          </div>`}
  </section>`;
}
