/** The blank picture: touch a muscle, say what is to be done to it. The plan itself is not shown here. */
import { Choice } from '../../parts/choice/choice.js';
import { Eyes } from '../../parts/eyes/eyes.js';
import { html, useEffect, useRef, useState } from '../../vendor/preact.js';
import { mayBeOffset, operationWords, operationsOn, placeWords, wayOf, workWords } from '../../words/anatomy.js';

/** @typedef {{eye: any, muscle: any}} Place */
/** @typedef {import('./signing.js').Done} Done */

const NOTHING = 'nothing';
const WAYS = ['up', 'down'].map((way) => ({ value: way, words: `moved ${way}` }));

/** @param {string} muscle */
const choicesOn = (muscle) => [...operationsOn(/** @type {any} */ (muscle)), NOTHING].map((operation) => ({ value: operation, words: operationWords(operation) }));

/** @param {{drawn: any[], onDraw: (place: Place, done: Done | null) => void}} props */
export function Drawing({ drawn, onDraw }) {
  const [place, setPlace] = useState(/** @type {Place | null} */ (null));
  const say = useRef(/** @type {HTMLElement | null} */ (null));
  const work = place && drawn.find(({ eye, muscle }) => eye === place.eye && muscle === place.muscle);
  // On a small screen the choices lie under the foot; they come into view with the muscle that was touched.
  useEffect(() => {
    if (place) say.current?.scrollIntoView({ block: 'nearest' });
  }, [place]);

  return html`<div class="drawing stack">
    <p>Touch each muscle to be operated and say what is done to it. The picture faces the patient: the RIGHT eye is on the left.</p>
    <${Eyes} works=${drawn} label="Your drawing" chosen=${place} onTouch=${setPlace} />
    <div class="drawing-say" aria-live="polite" ref=${say}>
      ${place ? html`<${Saying} place=${place} work=${work} onDraw=${onDraw} />` : html`<p class="soft">No muscle touched yet.</p>`}
    </div>
    ${drawn.length > 0 &&
    html`<section aria-label="Drawn so far">
      <h2 class="small soft">Drawn so far</h2>
      <ul class="drawn-list">${drawn.map((one) => html`<li key=${`${one.eye} ${one.muscle}`}>${workWords(one)}</li>`)}</ul>
    </section>`}
  </div>`;
}

/** @param {{place: Place, work: any, onDraw: (place: Place, done: Done | null) => void}} props */
function Saying({ place, work, onDraw }) {
  return html`<div class="stack tight">
    <${Choice}
      legend=${placeWords(place)}
      name="operation"
      options=${choicesOn(place.muscle)}
      value=${work?.operation ?? NOTHING}
      onChange=${(/** @type {string} */ said) => onDraw(place, said === NOTHING ? null : { operation: said, offset: work ? wayOf(work) : null })}
    />
    ${work &&
    mayBeOffset(place.muscle) &&
    html`<${Choice}
      legend="Its tendon, across the pull"
      name="offset"
      options=${[{ value: null, words: 'not moved' }, ...WAYS]}
      value=${wayOf(work)}
      onChange=${(/** @type {'up' | 'down' | null} */ offset) => onDraw(place, { operation: work.operation, offset })}
    />`}
  </div>`;
}
