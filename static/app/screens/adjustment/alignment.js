/** The deviation at distance and near, each direction with its word. */
import { FigureField } from '../../parts/figure-field/figure-field.js';
import { LIMITS } from '../../parts/number-pad/limits.js';
import { html } from '../../vendor/preact.js';
import { DIRECTIONS } from '../../words/reading.js';
import { RANGES } from './adjusting.js';

const AXES = [
  { field: 'horizontal_pd', words: 'horizontal', range: { ...LIMITS.horizontal_pd, decimals: 0, unit: 'Δ', signs: DIRECTIONS.horizontal } },
  { field: 'vertical_pd', words: 'vertical', range: { ...LIMITS.vertical_pd, decimals: 0, unit: 'Δ', signs: DIRECTIONS.vertical } },
];
const NONE = { horizontal_pd: null, vertical_pd: null };

/** @param {{title: string, figures: Record<string, import('./adjusting.js').Figures>, onChange: (figures: Record<string, import('./adjusting.js').Figures>) => void}} props */
export function Alignment({ title, figures, onChange }) {
  return html`<section class="stack tight" aria-label=${title}>
    <h2>${title}</h2>
    <div class="figure-fields">
      ${RANGES.flatMap((range) =>
        AXES.map(
          (axis) => html`<${FigureField}
            key=${`${range} ${axis.field}`}
            label=${`At ${range}, ${axis.words}`}
            value=${figures[range]?.[axis.field] ?? null}
            range=${axis.range}
            onChange=${(/** @type {number | null} */ figure) => onChange({ ...figures, [range]: { ...NONE, ...figures[range], [axis.field]: figure } })}
          />`,
        ),
      )}
    </div>
  </section>`;
}
