/** Suture and needle, and whether the suture can be adjusted. Needles for sclera come first; the engine refuses the others there. */
import { Choice } from '../../parts/choice/choice.js';
import { Fold } from '../../parts/fold/fold.js';
import { html } from '../../vendor/preact.js';
import { GAUGE_CHOICES, NEEDLES, SUTURE_CHOICES } from '../../words/operation.js';
import { keyOf, usedBefore } from './recording.js';

/** @typedef {import('./recording.js').Muscle} Muscle */

const ADJUSTABLE = [
  { value: false, words: 'fixed' },
  { value: true, words: 'adjustable' },
];

/** @param {{recording: import('./recording.js').Recording, muscle: Muscle, forSclera?: string[], onTell: (fields: Partial<Muscle>) => void}} props */
export function Used({ recording, muscle, forSclera, onTell }) {
  const before = usedBefore(recording, keyOf(muscle));
  const needles = [...NEEDLES.map((needle) => ({ value: needle, words: needle, hint: forSclera && !forSclera.includes(needle) ? 'not for sclera' : undefined })), { value: null, words: 'not said' }];
  return html`<${Fold} title="Suture and needle" holds=${usedWords(muscle)}>
    <div class="stack">
      ${before && html`<button type="button" class="button" onClick=${() => onTell(before)}>As on the muscle before: ${usedWords({ ...before, adjustable: false })}</button>`}
      <${Choice} legend="Suture" name="suture" options=${SUTURE_CHOICES} value=${muscle.suture} onChange=${(/** @type {string | null} */ suture) => onTell({ suture })} />
      <${Choice} legend="Thickness" name="gauge" options=${GAUGE_CHOICES} value=${muscle.gauge} onChange=${(/** @type {string | null} */ gauge) => onTell({ gauge })} />
      <${Choice} legend="Needle" name="needle" options=${needles} value=${muscle.needle} onChange=${(/** @type {string | null} */ needle) => onTell({ needle })} />
      ${muscle.done && html`<${Choice} legend="The suture is" name="adjustable" options=${ADJUSTABLE} value=${muscle.adjustable} onChange=${(/** @type {boolean} */ adjustable) => onTell({ adjustable })} />`}
    </div>
  <//>`;
}

/** @param {Pick<Muscle, 'suture' | 'gauge' | 'needle' | 'adjustable'>} used */
export function usedWords({ suture, gauge, needle, adjustable }) {
  const parts = [[gauge, suture].filter(Boolean).join(' '), needle && `${needle} needle`, adjustable && 'adjustable'].filter(Boolean);
  return parts.join(', ') || 'not said';
}
