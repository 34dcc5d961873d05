/** How the head is held by habit: turned, tilted, chin up or down, each with its degrees where they were measured. */
import { Choice } from '../../../parts/choice/choice.js';
import { FigureField } from '../../../parts/figure-field/figure-field.js';
import { html } from '../../../vendor/preact.js';
import { POSTURES } from './postures.js';
import { RANGES } from './ranges.js';

/** @typedef {import('../examination.js').HeadPosture} Posture */

/** @param {{posture: Posture | null, onChange: (posture: Posture | null) => void}} props */
export function HeadPosture({ posture, onChange }) {
  /** @param {Posture} fields */
  const set = (fields) => {
    const next = { ...posture, ...fields };
    onChange(POSTURES.some(({ field }) => next[field]) ? next : null);
  };
  return html`<div class="stack">
    ${POSTURES.map(
      ({ field, legend, words }) => html`<div class="stack tight" key=${field}>
        <${Choice}
          legend=${legend}
          name=${`posture-${field}`}
          options=${[...Object.entries(words).map(([value, word]) => ({ value, words: word })), { value: null, words: 'not so' }]}
          value=${posture?.[field] ?? null}
          onChange=${(/** @type {string | null} */ way) => set(way === null ? { [field]: null, [`${field}_deg`]: null } : { [field]: way })}
        />
        ${posture?.[field] &&
        html`<${FigureField} label=${`${legend}, degrees`} value=${posture[`${field}_deg`]} range=${RANGES.posture} onChange=${(/** @type {number | null} */ degrees) => set({ [`${field}_deg`]: degrees })} />`}
      </div>`,
    )}
  </div>`;
}
