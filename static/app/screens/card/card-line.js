/** One muscle of the card. */
import { Picture } from '../../parts/picture/picture.js';
import { html } from '../../vendor/preact.js';
import { mmFigure, mmWords } from '../../words/figures.js';
import { besideLimbus } from './beside-limbus.js';
import { CardSteps } from './card-steps.js';

/** @param {{line: any}} props a `CardLine` of the engine */
export function CardLine({ line }) {
  const { attachment_words: attached = '', offset_words: offset = '' } = line;
  return html`<li class="card-line">
    <p class="card-eye">${line.eye_words}</p>
    <p class="card-muscle">${line.muscle_words}</p>
    <p class="card-work">
      <span class="card-operation">${line.operation_words}</span>
      ${line.mm !== null && html`${' '}<span class="card-mm">${mmFigure(line.mm)}<span class="card-unit"> mm</span></span>`}
    </p>
    ${offset && html`<p class="card-offset">${offset}</p>`}
    ${attached && html`<p class="card-attached">${attached}</p>`}
    ${line.limbus_mm !== null &&
    html`<p class="card-limbus">
      <strong>${mmWords(line.limbus_mm)}</strong> from the limbus
      ${besideLimbus(line) && html`${' '}<span class="soft card-insertion">(${besideLimbus(line)})</span>`}
    </p>`}
    ${line.ruler && html`<div class="card-ruler"><${Picture} picture=${line.ruler} /></div>`}
    ${line.surgeon_changed && html`<p class="card-both">Changed by the surgeon: table ${mmWords(line.table_mm)}, <strong>surgeon ${mmWords(line.mm)}</strong></p>`}
    <${CardSteps} line=${line} />
  </li>`;
}
