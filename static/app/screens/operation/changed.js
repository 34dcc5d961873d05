/** What was done instead, by how much, and why. */
import { Choice } from '../../parts/choice/choice.js';
import { Field } from '../../parts/field/field.js';
import { FigureField } from '../../parts/figure-field/figure-field.js';
import { LIMITS } from '../../parts/number-pad/limits.js';
import { html } from '../../vendor/preact.js';
import { mayBeOffset, operationWords, operationsOn } from '../../words/anatomy.js';

const NOT_DONE = 'not operated';
const MM = { ...LIMITS.dose_mm, decimals: 1, unit: 'mm' };
const OFFSETS = [{ value: null, words: 'not moved' }, ...['up', 'down'].map((way) => ({ value: way, words: `moved ${way}` }))];

/** @param {{muscle: import('./recording.js').Muscle, onTell: (fields: Partial<import('./recording.js').Muscle>) => void}} props */
export function Changed({ muscle, onTell }) {
  const { done } = muscle;
  const ways = [...operationsOn(muscle.muscle).map((operation) => ({ value: operation, words: operationWords(operation) })), ...(muscle.planned ? [{ value: NOT_DONE, words: NOT_DONE }] : [])];
  /** @param {string} said */
  const choose = (said) => {
    if (said === NOT_DONE) return onTell({ done: null, adjustable: false });
    const operation = /** @type {import('../../words/anatomy.js').Operation} */ (said);
    // Millimetres of one operation are not those of another.
    onTell({ done: { operation, mm: done?.operation === operation ? done.mm : null, offset: done?.offset ?? null } });
  };
  return html`<section class="card stack" aria-label="What was done">
    <${Choice} legend="What was done" name="done" options=${ways} value=${done?.operation ?? NOT_DONE} onChange=${choose} />
    ${done && html`<${FigureField} label="Millimetres done" value=${done.mm} range=${MM} none="none" onChange=${(/** @type {number | null} */ mm) => onTell({ done: { ...done, mm } })} />`}
    ${done &&
    mayBeOffset(muscle.muscle) &&
    html`<${Choice} legend="Its tendon, across the pull" name="offset" options=${OFFSETS} value=${done.offset} onChange=${(/** @type {'up' | 'down' | null} */ offset) => onTell({ done: { ...done, offset } })} />`}
    <${Field} label="Why it differs from the plan" name="reason" rows=${2} value=${muscle.reason} input=${{ maxlength: 400 }} onInput=${(/** @type {string} */ reason) => onTell({ reason })} />
  </section>`;
}
