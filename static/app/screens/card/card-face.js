/** The card as the engine made it, in the order in which theatre reads: eye, muscle, operation, mm; then the rest. */
import { momentWords } from '../../parts/calendar/ago.js';
import { dateWords } from '../../parts/calendar/date.js';
import { Notices } from '../../parts/notice/notice.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';
import { AlertStrip, CardAlerts } from './card-alerts.js';
import { CardLine } from './card-line.js';
import { CardPictures } from './card-pictures.js';

/** @param {{card: any}} props a `Card` of the engine */
export function CardFace({ card }) {
  return html`<article class="card-face" aria-label="Card">
    <${AlertStrip} alerts=${card.alerts ?? []} />
    <ul class=${`card-lines card-lines-${card.lines.length}`}>
      ${card.lines.map((/** @type {any} */ line) => html`<${CardLine} key=${`${line.eye} ${line.muscle}`} line=${line} />`)}
    </ul>
    <${CardAlerts} alerts=${card.alerts ?? []} />
    <div class="card-below">
      <${CardPictures} pictures=${card.pictures ?? []} />
      <div class="stack">
        <${Notices} notices=${card.notices} />
        ${card.plan_note && html`<p><span class="soft">Note: </span>${card.plan_note}</p>`}
        <p>${card.deviation_words}</p>
        <p>${card.expected_words}</p>
      </div>
    </div>
    <div class="card-seal">
      <p><span class="soft">Check word</span> <strong class="card-word">${card.check_word}</strong></p>
      <p><span class="soft">Signed by</span> <strong>${card.signer_name}</strong><br />${momentWords(card.signed_at)}</p>
      <p><span class="soft">Examined on</span> <strong>${dateWords(card.examined_on)}</strong></p>
    </div>
    <footer class="card-foot small">
      <p>Table <strong>${card.table.name}</strong>, engine ${card.engine_version}</p>
      ${card.distances_words && html`<p>${card.distances_words}</p>`}
      <${Provenance} of=${card.table.provenance} />
      ${card.table.caution && html`<p>${card.table.caution}</p>`}
      <p>${card.disclaimer}</p>
    </footer>
  </article>`;
}
