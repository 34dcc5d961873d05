/** One adjustable suture: left as it was tied, or moved, which way and by how much. */
import { Choice } from '../../parts/choice/choice.js';
import { FigureField } from '../../parts/figure-field/figure-field.js';
import { LIMITS } from '../../parts/number-pad/limits.js';
import { html } from '../../vendor/preact.js';
import { placeWords } from '../../words/anatomy.js';
import { workShort } from '../../words/operation.js';
import { NOT_MOVED, keyOf } from './adjusting.js';

const WAYS = [
  { value: null, words: 'as it was' },
  { value: 'loosen', words: 'loosened', hint: 'let back' },
  { value: 'tighten', words: 'tightened', hint: 'brought forward' },
];
const MM = { ...LIMITS.moved_mm, decimals: 1, unit: 'mm' };
const FROM_LIMBUS = { ...LIMITS.from_limbus_mm, decimals: 1, unit: 'mm' };

/** @param {{muscle: any, moved: import('./adjusting.js').Moved, onChange: (moved: import('./adjusting.js').Moved) => void}} props */
export function MovedSuture({ muscle, moved, onChange }) {
  return html`<section class="card stack" aria-label=${placeWords(muscle)}>
    <h2>${placeWords(muscle)}</h2>
    <p class="soft">Done: ${workShort(muscle.done)}</p>
    <${Choice} legend="The suture was" name=${`way-${keyOf(muscle)}`} options=${WAYS} value=${moved.way} onChange=${(/** @type {import('./adjusting.js').Moved['way']} */ way) => onChange(way ? { ...moved, way } : NOT_MOVED)} />
    ${moved.way &&
    html`<div class="figure-fields">
      <${FigureField} label="By how much" value=${moved.mm} range=${MM} none="none" onChange=${(/** @type {number | null} */ mm) => onChange({ ...moved, mm })} />
      <${FigureField} label="Attachment now, from the limbus" value=${moved.limbus_mm} range=${FROM_LIMBUS} onChange=${(/** @type {number | null} */ limbus_mm) => onChange({ ...moved, limbus_mm })} />
    </div>`}
  </section>`;
}
