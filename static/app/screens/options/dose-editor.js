/** One dose to change in half millimetres or exactly; the table's figure stays beside the surgeon's, with its steps. */
import { FigurePad } from '../../parts/number-pad/number-pad.js';
import { LIMITS } from '../../parts/number-pad/limits.js';
import { Why } from '../../parts/why/why.js';
import { html, useState } from '../../vendor/preact.js';
import { EYE_WORDS, MUSCLE_WORDS, placeWords, workWords } from '../../words/anatomy.js';
import { GAP, mmFigure, mmWords } from '../../words/figures.js';
import { STEP_MM, stepped } from '../../planning/changes.js';

const RANGE = { ...LIMITS.dose_mm, decimals: 1, unit: 'mm' };

/**
 * @param {object} props
 * @param {any} props.dose a `Dose` of the engine
 * @param {number} props.mm what the surgeon has set; the engine's `dose` follows it a moment later
 * @param {(mm: number) => void} props.onSet
 */
export function DoseEditor({ dose, mm, onSet }) {
  const [isExact, setExact] = useState(false);
  const place = placeWords(dose);
  /** @param {1 | -1} direction */
  const step = (direction) => onSet(stepped(mm, direction, LIMITS.dose_mm));
  const isChanged = mm !== dose.table_mm;
  return html`<li class=${isChanged ? 'dose-editor changed' : 'dose-editor'}>
    <p class="dose-place"><span class="side">${EYE_WORDS[dose.eye]}</span>${' '}<span>${MUSCLE_WORDS[dose.muscle]}, <strong>${dose.operation}</strong></span></p>
    <div class="dose-steps" role="group" aria-label=${`${place}, millimetres`}>
      <button type="button" class="dose-step" aria-label=${`${STEP_MM} mm less`} onClick=${() => step(-1)}>−</button>
      <button type="button" class="dose-own" aria-label=${`${mmWords(mm)}, enter exactly`} onClick=${() => setExact(true)}>
        ${mmFigure(mm)}<span class="unit">${GAP}mm</span>
      </button>
      <button type="button" class="dose-step" aria-label=${`${STEP_MM} mm more`} onClick=${() => step(1)}>+</button>
    </div>
    <p class="dose-after" aria-live="polite">${mm === dose.mm ? `${mmWords(dose.limbus_mm)} from the limbus` : 'calculating'}</p>
    <div class="dose-table">
      <${Why} label=${`${workWords(dose)}, table ${mmWords(dose.table_mm)}`} steps=${dose.steps}>table ${mmWords(dose.table_mm)}. Why?<//>
      ${isChanged &&
      html`<p class="dose-both"><strong>surgeon ${mmWords(mm)}</strong></p>
        <button type="button" class="button" aria-label=${`${place}: back to the table's ${mmWords(dose.table_mm)}`} onClick=${() => onSet(dose.table_mm)}>Back to the table</button>`}
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
