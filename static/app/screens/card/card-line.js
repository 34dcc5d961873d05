/** One muscle of the card. */
import { html } from '../../vendor/preact.js';
import { mmFigure, mmWords } from '../../words/figures.js';

/** @param {{line: any}} props a `CardLine` of the engine */
export function CardLine({ line }) {
  return html`<li class="card-line">
    <p class="card-eye">${line.eye_words}</p>
    <p class="card-muscle">${line.muscle_words}</p>
    <p class="card-work"><span class="card-operation">${line.operation_words}</span>${' '}<span class="card-mm">${mmFigure(line.mm)}<span class="card-unit"> mm</span></span></p>
    <p class="card-limbus"><strong>${mmWords(line.limbus_mm)}</strong> from the limbus <span class="soft card-insertion">(insertion ${mmWords(line.insertion_mm)})</span></p>
    ${line.surgeon_changed && html`<p class="card-both">Changed by the surgeon: table ${mmWords(line.table_mm)}, <strong>surgeon ${mmWords(line.mm)}</strong></p>`}
  </li>`;
}
