/** One muscle of an operation: eye, muscle, operation and mm in words, and where the muscle comes to lie. */
import { html } from '../../vendor/preact.js';
import { EYE_WORDS, MUSCLE_WORDS, workWords } from '../../words/anatomy.js';
import { GAP, mmFigure, mmWords } from '../../words/figures.js';
import { Why } from '../why/why.js';


/** @param {{dose: any}} props a `Dose` of the engine */
export function DoseLine({ dose }) {
  return html`<li class="dose-line">
    <span class="dose-place">
      <span class="side">${EYE_WORDS[dose.eye]}</span>${' '}
      <span>${MUSCLE_WORDS[dose.muscle]}, <strong>${dose.operation}</strong></span>
    </span>
    <span class="dose-work">
      <${Why} label=${`${workWords(dose)} ${mmWords(dose.mm)}`} steps=${dose.steps}>
        <span class="dose-mm">${mmFigure(dose.mm)}<span class="unit">${GAP}mm</span></span>
      <//>
    </span>
    <span class="dose-limbus">
      ${mmWords(dose.limbus_mm)} from the limbus
      ${dose.changed && html`<${BothFigures} table_mm=${dose.table_mm} own_mm=${dose.mm} />`}
    </span>
  </li>`;
}

/** A changed figure shows both. @param {{table_mm: number, own_mm: number}} props */
export function BothFigures({ table_mm, own_mm }) {
  return html`<span class="both-figures">table ${mmWords(table_mm)}, <strong>surgeon ${mmWords(own_mm)}</strong></span>`;
}
