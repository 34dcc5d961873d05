/** The deviation that the plan answers: the figure that counts, how exact it is, and as it was read where that differs. */
import { Notices } from '../../parts/notice/notice.js';
import { Why } from '../../parts/why/why.js';
import { html } from '../../vendor/preact.js';
import { prismWords } from '../../words/figures.js';
import { CORRECTION_WORDS, cellWords, deviationWords } from '../../words/reading.js';
import { unusualWords } from '../../words/taking.js';

/** @param {{target: any}} props a `Target` of the engine */
export function Target({ target }) {
  const { horizontal_pd: horizontal, raw_pd: raw, vertical_pd: vertical, reading, steps = [], limits_pd: limits, notices = [] } = target;
  const figure = horizontal === 0 ? 'no horizontal deviation' : deviationWords('horizontal', horizontal);
  const how = [cellWords(reading), CORRECTION_WORDS[reading.correction], ...unusualWords(reading)].join(', ');
  return html`<section class="target card stack tight" aria-label="Planned for">
    <p class="small soft">Planned for: ${how}</p>
    <p class="target-figure">
      ${steps.length ? html`<${Why} label=${`Planned for ${figure}`} steps=${steps}>${figure}<//>` : figure}
      ${limits ? html`${' '}<span class="target-limits">± ${prismWords(limits)} <span class="small soft">95 %</span></span>` : null}
    </p>
    ${vertical ? html`<p class="target-vertical">${deviationWords('vertical', vertical)}</p>` : null}
    ${raw !== undefined && raw !== horizontal && html`<p><span class="raw-figure">read as ${raw === 0 ? 'none' : deviationWords('horizontal', raw)}</span> <span class="small soft">corrected for the way it was taken</span></p>`}
    <${Notices} notices=${notices} />
  </section>`;
}
