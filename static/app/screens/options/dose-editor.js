/** One dose to change in half millimetres or exactly; the table's figure stays beside the surgeon's, with its steps. */
import { adjustedWords, limbusWords, offsetWords, roomWords, tableWords } from '../../parts/dose-line/dose-words.js';
import { FigurePad } from '../../parts/number-pad/number-pad.js';
import { LIMITS } from '../../parts/number-pad/limits.js';
import { Why } from '../../parts/why/why.js';
import { html, useState } from '../../vendor/preact.js';
import { EYE_WORDS, MUSCLE_WORDS, operationWords, placeWords, workWords } from '../../words/anatomy.js';
import { GAP, mmFigure, mmWords } from '../../words/figures.js';
import { STEP_MM, stepped } from '../../planning/changes.js';

const RANGE = { ...LIMITS.dose_mm, decimals: 1, unit: 'mm' };

/**
 * @param {object} props
 * @param {any} props.dose a `Dose` of the engine
 * @param {number | null} props.own_mm what the surgeon has set; the engine's `dose` follows it a moment later
 * @param {(mm: number | null) => void} props.onSet null for the table's figure again
 */
export function DoseEditor({ dose, own_mm, onSet }) {
  return dose.mm === null ? html`<${Wordless} dose=${dose} />` : html`<${Graded} dose=${dose} own_mm=${own_mm} onSet=${onSet} />`;
}

/** @param {{dose: any}} props */
function Place({ dose }) {
  return html`<p class="dose-place"><span class="side">${EYE_WORDS[dose.eye]}</span>${' '}<span>${MUSCLE_WORDS[dose.muscle]}, <strong>${operationWords(dose.operation)}</strong></span></p>`;
}

/** An operation without millimetres: there is nothing to change, only to read. @param {{dose: any}} props */
function Wordless({ dose }) {
  return html`<li class="dose-editor">
    <${Place} dose=${dose} />
    <p class="dose-after">${[limbusWords(dose), offsetWords(dose)].filter(Boolean).join(', ')}</p>
    <div class="dose-table"><${Why} label=${workWords(dose)} steps=${dose.steps}>Why?<//></div>
  </li>`;
}

/** @param {{dose: any, own_mm: number | null, onSet: (mm: number | null) => void}} props */
function Graded({ dose, own_mm, onSet }) {
  const [isExact, setExact] = useState(false);
  const mm = own_mm ?? dose.mm;
  const isAnswered = own_mm === null ? !dose.changed : own_mm === dose.mm;
  const isChanged = isAnswered ? dose.changed : own_mm !== null;
  const place = placeWords(dose);
  /** @param {1 | -1} direction */
  const step = (direction) => onSet(stepped(mm, direction, LIMITS.dose_mm));
  return html`<li class=${isChanged ? 'dose-editor changed' : 'dose-editor'}>
    <${Place} dose=${dose} />
    <div class="dose-steps" role="group" aria-label=${`${place}, millimetres`}>
      <button type="button" class="dose-step" aria-label=${`${STEP_MM} mm less`} onClick=${() => step(-1)}>−</button>
      <button type="button" class="dose-own" aria-label=${`${mmWords(mm)}, enter exactly`} onClick=${() => setExact(true)}>
        ${mmFigure(mm)}<span class="unit">${GAP}mm</span>
      </button>
      <button type="button" class="dose-step" aria-label=${`${STEP_MM} mm more`} onClick=${() => step(1)}>+</button>
    </div>
    <p class="dose-after" aria-live="polite">${isAnswered ? limbusWords(dose) : 'calculating'}</p>
    ${dose.offset && html`<p class="dose-after">${offsetWords(dose)}</p>`}
    ${isAnswered && roomWords(dose) && html`<p class="dose-room small soft">${roomWords(dose)}</p>`}
    <div class="dose-table">
      <${Why} label=${`${workWords(dose)}, ${tableWords(dose)}`} steps=${dose.steps}>${adjustedWords(dose) || tableWords(dose)}. Why?<//>
      ${isChanged &&
      html`<p class="dose-both"><strong>surgeon ${mmWords(mm)}</strong></p>
        <button type="button" class="button" aria-label=${`Back to the table: ${place}`} onClick=${() => onSet(null)}>Back to the table</button>`}
    </div>
    ${isExact &&
    html`<${FigurePad}
      title=${workWords(dose)}
      value=${mm}
      range=${RANGE}
      onTake=${(/** @type {number} */ taken) => {
        onSet(taken);
        setExact(false);
      }}
      onClose=${() => setExact(false)}
    />`}
  </li>`;
}
