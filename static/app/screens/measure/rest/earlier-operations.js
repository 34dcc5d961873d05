/** Muscles that were operated before: which, what, how much and when, as far as it is known. */
import { Choice } from '../../../parts/choice/choice.js';
import { FigurePad } from '../../../parts/number-pad/number-pad.js';
import { LIMITS } from '../../../parts/number-pad/limits.js';
import { html, useState } from '../../../vendor/preact.js';
import { EYES, EYE_WORDS, MUSCLES, MUSCLE_WORDS } from '../../../words/anatomy.js';
import { mmWords } from '../../../words/figures.js';
import { dateWords } from '../../../parts/calendar/date.js';
import { EMPTY_OPERATION } from '../examination.js';
import { sourceOf } from './taking-over.js';

/** @typedef {import('../examination.js').PastOperation} PastOperation */

const EYE_OPTIONS = EYES.map((eye) => ({ value: eye, words: EYE_WORDS[eye] }));
const MUSCLE_OPTIONS = MUSCLES.map((muscle) => ({ value: muscle, words: MUSCLE_WORDS[muscle] }));
const WHAT_OPTIONS = ['recess', 'resect', 'other', 'unknown'].map((what) => ({ value: what, words: what }));

const FIGURES = /** @type {const} */ ({
  mm: { label: 'Amount', range: { ...LIMITS.previous_mm, decimals: 1, unit: 'mm' } },
  year: { label: 'Year', range: { ...LIMITS.year, decimals: 0, unit: '' } },
});

/** @param {{operations: PastOperation[], earlier: import('./taking-over.js').Earlier[], onChange: (operations: PastOperation[]) => void}} props */
export function EarlierOperations({ operations, earlier, onChange }) {
  return html`<div class="stack">
    ${operations.map(
      (operation, index) => html`<${EarlierOperation}
        key=${index}
        number=${index + 1}
        operation=${operation}
        from=${sourceOf(operation, earlier)}
        onChange=${(/** @type {PastOperation} */ changed) => onChange(operations.with(index, changed))}
        onRemove=${() => onChange(operations.toSpliced(index, 1))}
      />`,
    )}
    <button type="button" class="button" onClick=${() => onChange([...operations, EMPTY_OPERATION])}>
      ${operations.length ? 'Add another muscle' : 'Add a muscle'}
    </button>
  </div>`;
}

/** @param {{number: number, operation: PastOperation, from: string, onChange: (operation: PastOperation) => void, onRemove: () => void}} props */
function EarlierOperation({ number, operation, from, onChange, onRemove }) {
  const [pad, setPad] = useState(/** @type {'mm' | 'year' | null} */ (null));
  const name = `earlier-${number}`;
  /** @param {Partial<PastOperation>} fields */
  const set = (fields) => onChange({ ...operation, ...fields });
  return html`<section class="earlier stack" aria-label=${`Earlier operation ${number}`}>
    ${from && html`<p class="small soft">From the operation record of ${dateWords(from)}</p>`}
    <${Choice} legend="Eye" quiet=${true} name=${`${name}-eye`} options=${EYE_OPTIONS} value=${operation.eye} onChange=${(/** @type {string} */ eye) => set({ eye })} />
    <${Choice} legend="Muscle" quiet=${true} name=${`${name}-muscle`} options=${MUSCLE_OPTIONS} value=${operation.muscle} onChange=${(/** @type {string} */ muscle) => set({ muscle })} />
    <${Choice} legend="What was done" quiet=${true} name=${`${name}-what`} options=${WHAT_OPTIONS} value=${operation.operation} onChange=${(/** @type {string} */ what) => set({ operation: what })} />
    <div class="buttons">
      <button type="button" class="button" onClick=${() => setPad('mm')}>${operation.mm === null ? 'Add mm' : mmWords(operation.mm)}</button>
      <button type="button" class="button" onClick=${() => setPad('year')}>${operation.year === null ? 'Add year' : String(operation.year)}</button>
      <button type="button" class="button bare" onClick=${onRemove}>Take it out</button>
    </div>
    ${pad &&
    html`<${FigurePad}
      title=${FIGURES[pad].label}
      value=${operation[pad]}
      range=${FIGURES[pad].range}
      optional=${true}
      onTake=${(/** @type {number | null} */ figure) => {
        set({ [pad]: figure });
        setPad(null);
      }}
      onClose=${() => setPad(null)}
    />`}
  </section>`;
}
