/** Every position as it counts: the figure, its 95 % limits, of how many readings; as it was read only where that differs. */
import { Why } from '../../parts/why/why.js';
import { html } from '../../vendor/preact.js';
import { prismWords } from '../../words/figures.js';
import { CORRECTION_WORDS, cellWords, deviationWords } from '../../words/reading.js';
import { unusualWords } from '../../words/taking.js';

/** @typedef {import('./places.js').Measured} Measured */
/** @typedef {import('./places.js').Measure} Measure */

/** @param {{measured: Measured[]}} props */
export function MeasuredList({ measured }) {
  return html`<ul class="measured">
    ${measured.map((each) => {
      const where = [cellWords(each), CORRECTION_WORDS[each.correction], ...unusualWords({ condition: each.condition })].join(', ');
      return html`<li key=${where} class="measured-place">
        <span class="small soft">${where}</span>
        ${each.horizontal && html`<${Direction} axis="horizontal" where=${where} measure=${each.horizontal} />`}
        ${each.vertical && html`<${Direction} axis="vertical" where=${where} measure=${each.vertical} />`}
      </li>`;
    })}
  </ul>`;
}

/** @param {{axis: 'horizontal' | 'vertical', where: string, measure: Measure}} props */
function Direction({ axis, where, measure: { raw_pd, corrected_pd, limits_pd, readings, steps } }) {
  const figure = corrected_pd === 0 ? `no ${axis}` : deviationWords(axis, corrected_pd);
  return html`<span class="measured-direction">
    ${steps.length > 0 ? html`<${Why} label=${`${where}: ${figure}`} steps=${steps}><strong>${figure}</strong><//>` : html`<strong>${figure}</strong>`}
    <span>± ${prismWords(limits_pd)}</span>
    ${readings > 1 && html`<span class="small soft">${readings} readings</span>`}
    ${raw_pd !== corrected_pd && html`<span class="raw-figure">read ${raw_pd === 0 ? 'none' : deviationWords(axis, raw_pd)}</span>`}
  </span>`;
}
