/** What was measured and felt on the muscle; all of it optional, folded under what it holds. */
import { Choice } from '../../parts/choice/choice.js';
import { FigureField } from '../../parts/figure-field/figure-field.js';
import { Fold } from '../../parts/fold/fold.js';
import { LIMITS } from '../../parts/number-pad/limits.js';
import { html } from '../../vendor/preact.js';
import { mmWords } from '../../words/figures.js';
import { PULL_CHOICES, SCARRING, SCARRING_CHOICES, STATE_CHOICES } from '../../words/operation.js';

const FROM_LIMBUS = { ...LIMITS.from_limbus_mm, decimals: 1, unit: 'mm' };

/** @param {{muscle: import('./recording.js').Muscle, onTell: (fields: Partial<import('./recording.js').Muscle>) => void}} props */
export function Found({ muscle, onTell }) {
  return html`<${Fold} title="Found on this muscle" holds=${foundWords(muscle)}>
    <div class="stack">
      <div class="figure-fields">
        <${FigureField} label="Attachment before, from the limbus" value=${muscle.insertion_mm} range=${FROM_LIMBUS} onChange=${(/** @type {number | null} */ insertion_mm) => onTell({ insertion_mm })} />
        <${FigureField} label="Attachment at the end, from the limbus" value=${muscle.limbus_mm} range=${FROM_LIMBUS} onChange=${(/** @type {number | null} */ limbus_mm) => onTell({ limbus_mm })} />
      </div>
      <${Choice} legend="Forced duction into its field, before" name="duction-before" options=${PULL_CHOICES} value=${muscle.duction_before} onChange=${(/** @type {string | null} */ duction_before) => onTell({ duction_before })} />
      <${Choice} legend="Forced duction into its field, at the end" name="duction-after" options=${PULL_CHOICES} value=${muscle.duction_after} onChange=${(/** @type {string | null} */ duction_after) => onTell({ duction_after })} />
      <${Choice} legend="Scarring" name="scarring" options=${SCARRING_CHOICES} value=${muscle.scarring} onChange=${(/** @type {number | null} */ scarring) => onTell({ scarring })} />
      <${Choice} legend="The muscle was" name="state" options=${STATE_CHOICES} value=${muscle.state} onChange=${(/** @type {string} */ state) => onTell({ state })} />
    </div>
  <//>`;
}

/** @param {import('./recording.js').Muscle} muscle */
export function foundWords({ insertion_mm, limbus_mm, duction_before, duction_after, scarring, state }) {
  const parts = [
    insertion_mm !== null && `${mmWords(insertion_mm)} before`,
    limbus_mm !== null && `${mmWords(limbus_mm)} at the end`,
    duction_before && `forced duction ${duction_before} before`,
    duction_after && `forced duction ${duction_after} at the end`,
    scarring !== null && `scarring ${SCARRING[scarring]}`,
    state !== 'in place' && `muscle ${state}`,
  ].filter(Boolean);
  return parts.join(', ') || 'nothing measured';
}
