/** The operation as the consent names it: every muscle of both eyes stands here in words, none of them chosen. */
import { Choice } from '../../../parts/choice/choice.js';
import { MuscleGrid } from '../../../parts/muscle-grid/muscle-grid.js';
import { html, useEffect, useRef } from '../../../vendor/preact.js';
import { operationWords, operationsOn, placeWords, workWords } from '../../../words/anatomy.js';

const NOTHING = 'nothing';

/** @typedef {import('../../../parts/muscle-grid/muscle-grid.js').Place} Place */

/** @param {{held: Record<string, any>, onHold: (held: Record<string, any>) => void}} props */
export function ConsentEntry({ held, onHold }) {
  /** @type {any[]} */
  const said = held.consented ?? [];
  /** @param {Place} place */
  const at = (place) => said.find(({ eye, muscle }) => eye === place.eye && muscle === place.muscle);
  /** @param {Place} place @param {string} operation */
  const say = (place, operation) => {
    const others = said.filter((one) => one !== at(place));
    onHold({ consented: operation === NOTHING ? others : [...others, { eye: place.eye, muscle: place.muscle, operation }] });
  };
  return html`<div class="stack">
    <${MuscleGrid}
      holdsOf=${(/** @type {Place} */ place) => {
        const work = at(place);
        if (!work) return { shown: '', said: NOTHING };
        const words = operationWords(work.operation);
        return { shown: words, said: words };
      }}
      panelOf=${(/** @type {Place} */ place) => html`<${InView} key=${placeWords(place)}><${Choice}
        legend=${placeWords(place)}
        name=${`operation-${place.eye}-${place.muscle}`}
        options=${[...operationsOn(place.muscle), NOTHING].map((operation) => ({ value: operation, words: operationWords(operation) }))}
        value=${at(place)?.operation ?? NOTHING}
        onChange=${(/** @type {string} */ operation) => say(place, operation)}
      /><//>`}
    />
    <section class="check-said" aria-label="Entered from the consent" aria-live="polite">
      ${said.length === 0
        ? html`<p class="soft">Nothing entered yet.</p>`
        : html`<ul class="stack tight">${said.map((one) => html`<li key=${workWords(one)}><strong>${workWords(one)}</strong></li>`)}</ul>`}
    </section>
  </div>`;
}

/** On a small screen the choices lie under the foot; they come into view with the muscle that was touched. @param {{children: unknown}} props */
function InView({ children }) {
  const box = useRef(/** @type {HTMLElement | null} */ (null));
  useEffect(() => box.current?.scrollIntoView({ block: 'nearest' }), []);
  return html`<div class="check-in-view" ref=${box}>${children}</div>`;
}
