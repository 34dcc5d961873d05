/** One group in full: cautions, numbers, success by each definition, charts, case mix. */
import { Fold } from '../../parts/fold/fold.js';
import { Notices } from '../../parts/notice/notice.js';
import { Picture } from '../../parts/picture/picture.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';
import { FigureTable } from './figure-table.js';

/** @typedef {{mark: string, source: string}} Source */
/** @typedef {{label: string, words: string, note: string}} Told */
/** @typedef {{id: string, definition: string, share_words: string, interval_words: string, counts_words: string, extremes: string, provenance: Source}} Judged */
/** @typedef {{code: string, title: string, picture: import('../../parts/picture/picture.js').PictureFacts | null, says: string[], figures: import('./figure-table.js').Figures}} Charted */

/** @param {{group: {name: string, words: string, own: boolean, notices: any[], numbers: Told[], judged: Judged[], charts: Charted[], mix: import('./figure-table.js').Figures[]}}} props */
export function Group({ group }) {
  return html`<section class="stack wide" aria-labelledby="results-group">
    <h2 id="results-group">${group.words}${group.own && ' (yours)'}</h2>
    <${Notices} notices=${group.notices} />
    <dl class="results-numbers">
      ${group.numbers.map(
        ({ label, words, note }) => html`<div key=${label}>
          <dt>${label}${note && html`<span class="soft small"> (${note})</span>`}</dt>
          <dd>${words}</dd>
        </div>`,
      )}
    </dl>
    <section class="stack" aria-labelledby="results-success">
      <h3 id="results-success">Success by each definition</h3>
      ${group.judged.map((each) => html`<${JudgedBy} key=${each.id} of=${each} />`)}
    </section>
    <div class="results-charts">${group.charts.map((chart) => html`<${Chart} key=${chart.code} of=${chart} />`)}</div>
    <section class="stack" aria-labelledby="results-mix">
      <h3 id="results-mix">Case mix</h3>
      ${group.mix.map((each) => html`<${FigureTable} key=${each.title} figures=${each} />`)}
    </section>
  </section>`;
}

/** @param {{of: Judged}} props */
function JudgedBy({ of: each }) {
  return html`<div class="results-judged">
    <p class="results-share"><strong>${each.share_words}</strong><span>${each.interval_words}</span></p>
    <div>
      <p>${each.definition}</p>
      <p class="soft">${[each.counts_words, each.extremes].filter(Boolean).join('. ')}</p>
      <${Provenance} of=${each.provenance} />
    </div>
  </div>`;
}

/** @param {{of: Charted}} props */
function Chart({ of: { code, title, picture, says, figures } }) {
  return html`<section class="results-chart" aria-labelledby=${`chart-${code}`}>
    <h3 id=${`chart-${code}`}>${title}</h3>
    ${picture && html`<${Picture} picture=${picture} />`}
    ${says.map((words) => html`<p key=${words}>${words}</p>`)}
    ${figures.rows.length > 0 && html`<${Fold} title="Figures" holds=${`${figures.rows.length} row${figures.rows.length === 1 ? '' : 's'}`}><${FigureTable} figures=${figures} /><//>`}
  </section>`;
}
