/** Method, special condition and prisms; what cannot matter is not asked. */
import { Choice } from '../../parts/choice/choice.js';
import { FigureField } from '../../parts/figure-field/figure-field.js';
import { LIMITS } from '../../parts/number-pad/limits.js';
import { html } from '../../vendor/preact.js';
import { ARRANGEMENT_WORDS, CONDITION_WORDS, HELD_WORDS, MATERIAL_WORDS, METHOD_WORDS } from '../../words/taking.js';
import { readingAt } from './cells.js';
import { techniqueInView } from './sitting.js';
import { techniqueWith } from './taking.js';

/** @typedef {import('../../words/taking.js').Technique} Technique */

/** @param {Record<string, string>} words */
const options = (words) => Object.entries(words).map(([value, word]) => ({ value, words: word }));

const MATERIALS = [{ value: null, words: 'as labelled' }, ...options(MATERIAL_WORDS)];
const AWAY = { ...LIMITS.prism_from_cornea_mm, decimals: 0, unit: 'mm' };

/**
 * @param {object} props
 * @param {import('./sitting.js').Sitting} props.sitting
 * @param {(conditions: import('./sitting.js').Conditions) => void} props.onTurn
 * @param {(technique: Technique | null) => void} props.onHeld
 */
export function TakingChoices({ sitting, onTurn, onHeld }) {
  const { taking, open, range } = sitting;
  const method = open?.cell.method ?? taking.method;
  const technique = techniqueInView(sitting);
  /** @param {Partial<Technique>} fields */
  const set = (fields) => onHeld(techniqueWith(technique, fields));
  return html`
    <${Choice} legend="Method" name="method" options=${options(METHOD_WORDS)} value=${method} onChange=${(/** @type {string} */ chosen) => onTurn({ method: chosen })} />
    <${Choice} legend="Condition" name="condition" options=${options(CONDITION_WORDS)} value=${taking.condition} onChange=${(/** @type {string} */ chosen) => onTurn({ condition: chosen })} />
    ${method !== 'light reflex' &&
    html`<${Choice}
        legend="Prisms"
        name="material"
        options=${MATERIALS}
        value=${technique?.material ?? null}
        onChange=${(/** @type {any} */ material) => (material === null ? onHeld(null) : set({ material }))}
      />
      ${technique && html`<${Choice} legend="Held" name="held" options=${options(HELD_WORDS)} value=${technique.held} onChange=${(/** @type {any} */ held) => set({ held })} />`}
      ${open && html`<${Arrangement} reading=${readingAt(sitting.draft.readings, open.cell)} technique=${technique} onSet=${set} />`}
      ${technique && range === 'near' && html`<${FigureField} label="Prism from the cornea" value=${technique.prism_from_cornea_mm} range=${AWAY} none="not said" onChange=${(/** @type {number | null} */ mm) => set({ prism_from_cornea_mm: mm })} />`}`}
  `;
}

/**
 * One prism or two that share the reading; it belongs to a reading and does not go on to the next.
 * @param {{reading?: import('../../words/reading.js').Reading, technique: Technique | null, onSet: (fields: Partial<Technique>) => void}} props
 */
function Arrangement({ reading, technique, onSet }) {
  if (!reading) return html`<p class="small soft">Two prisms at once can be said when the reading has its figure.</p>`;
  return html`<div class="stack tight">
    <${Choice} legend="Arrangement" name="arrangement" options=${options(ARRANGEMENT_WORDS)} value=${technique?.arrangement ?? 'one'} onChange=${(/** @type {any} */ arrangement) => onSet({ arrangement })} />
    ${technique &&
    technique.arrangement !== 'one' &&
    html`<p class="small soft">The reading is the sum of both labels. Of the second prism:</p>
      <div class="figure-fields">
        ${/** @type {const} */ (['horizontal', 'vertical'])
          .filter((axis) => reading[`${axis}_pd`])
          .map((axis) => html`<${FigureField} key=${axis} label=${`Second prism, ${axis}`} value=${technique[`${axis}_second_pd`]} range=${secondRange(reading[`${axis}_pd`])} none="needed" onChange=${(/** @type {number | null} */ pd) => onSet({ [`${axis}_second_pd`]: pd })} />`)}
      </div>`}
  </div>`;
}

/** A part of the reading. @param {number | null | undefined} reading_pd */
const secondRange = (reading_pd) => ({ low: 0.5, high: Math.min(LIMITS.second_pd.high, Math.abs(reading_pd ?? 0) - 0.5), decimals: 1, unit: '\u0394' });
