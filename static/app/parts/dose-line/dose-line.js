/** One muscle of an operation: eye, muscle, operation and mm in words, and where the muscle comes to lie. */
import { html } from '../../vendor/preact.js';
import { EYE_WORDS, MUSCLE_WORDS, operationWords, workWords } from '../../words/anatomy.js';
import { GAP, mmFigure, mmWords } from '../../words/figures.js';
import { adjustedWords, limbusWords, offsetWords, tableWords } from './dose-words.js';
import { Why } from '../why/why.js';

/** @param {{dose: any}} props a `Dose` of the engine */
export function DoseLine({ dose }) {
  const figure = dose.mm === null ? 'no figure' : mmWords(dose.mm);
  return html`<li class="dose-line">
    <span class="dose-place">
      <span class="side">${EYE_WORDS[dose.eye]}</span>${' '}
      <span>${MUSCLE_WORDS[dose.muscle]}, <strong>${operationWords(dose.operation)}</strong></span>
    </span>
    <span class="dose-work">
      <${Why} label=${`${workWords(dose)} ${figure}`} steps=${dose.steps}>
        ${dose.mm === null ? html`<span class="dose-wordless">why</span>` : html`<span class="dose-mm">${mmFigure(dose.mm)}<span class="unit">${GAP}mm</span></span>`}
      <//>
    </span>
    <span class="dose-limbus">
      <span>${limbusWords(dose)}</span>
      ${dose.offset && html`<strong class="dose-offset">${offsetWords(dose)}</strong>`}
      ${adjustedWords(dose) && html`<span class="dose-adjusted">${adjustedWords(dose)}</span>`}
      ${dose.changed && html`<${BothFigures} dose=${dose} />`}
    </span>
  </li>`;
}

/** A changed figure shows both. @param {{dose: any}} props */
function BothFigures({ dose }) {
  return html`<span class="both-figures">${tableWords(dose)}, <strong>surgeon ${mmWords(dose.mm)}</strong></span>`;
}
