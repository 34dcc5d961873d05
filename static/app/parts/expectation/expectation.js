/** What an option is expected to do: the horizontal deviation on its strip with its chances, other deviations in sentences. */
import { html } from '../../vendor/preact.js';
import { deviationWords } from '../../words/reading.js';
import { ResidualStrip } from '../residual-strip/residual-strip.js';
import { spanWords } from '../residual-strip/scale.js';
import { Why } from '../why/why.js';
import { chanceWords, mainOutcome, percentWords } from './chances.js';

/** @param {{option: any, reach_pd: number, aim?: string}} props an `Option` of the engine */
export function Expectation({ option, reach_pd, aim = 'distance' }) {
  const { prediction = null, expected = [], answers = 'horizontal' } = option;
  const main = mainOutcome(prediction, aim);
  const other = prediction && [prediction.distance, prediction.near].find((outcome) => outcome && outcome !== main);
  return html`<div class="expectation">
    ${answers === 'horizontal' && html`<${ResidualStrip} expected_pd=${option.expected_residual_pd} reach_pd=${reach_pd} interval=${main} />`}
    ${answers === 'horizontal' && main && html`<${Chances} outcome=${main} steps=${prediction.steps} />`}
    ${answers === 'horizontal' &&
    other &&
    html`<p class="small">At ${other.range}: <strong>${other.mean_pd === 0 ? 'straight' : deviationWords('horizontal', other.mean_pd)}</strong>, in 95 of 100 between ${spanWords(other)}.</p>`}
    ${expected.map(
      (/** @type {any} */ each, /** @type {number} */ index) => html`<p class="expected-line" key=${index}>
        <span>${each.statement.text}</span> <${Why} label=${each.statement.text} steps=${[each.statement]}>why<//>
      </p>`,
    )}
  </div>`;
}

/** @param {{outcome: any, steps: any[]}} props */
function Chances({ outcome, steps }) {
  return html`<div class="chances">
    <${Why} label=${chanceWords(outcome)} steps=${steps}><strong class="chance-within">${percentWords(outcome.within_percent)}</strong><//>
    <p>within ${outcome.within_pd} Δ of straight<br /><span class="small soft">undercorrected ${percentWords(outcome.undercorrected_percent)}, overcorrected ${percentWords(outcome.overcorrected_percent)}</span></p>
  </div>`;
}
