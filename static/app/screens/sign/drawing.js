/** The blank picture: touch a muscle, say what is to be done to it. The plan itself is not shown here. */
import { Choice } from '../../parts/choice/choice.js';
import { Eyes } from '../../parts/eyes/eyes.js';
import { html, useState } from '../../vendor/preact.js';
import { OPERATIONS, placeWords, workWords } from '../../words/anatomy.js';

/** @typedef {import('../../words/anatomy.js').Eye} Eye */
/** @typedef {{eye: any, muscle: any}} Place */

const CHOICES = [...OPERATIONS.map((operation) => ({ value: operation, words: operation })), { value: 'nothing', words: 'nothing' }];

/** @param {{drawn: any[], onDraw: (place: Place, operation: string | null) => void}} props */
export function Drawing({ drawn, onDraw }) {
  const [place, setPlace] = useState(/** @type {Place | null} */ (null));
  const work = place && drawn.find(({ eye, muscle }) => eye === place.eye && muscle === place.muscle);
  return html`<div class="drawing stack">
    <p>Touch each muscle to be operated and say what is done to it. The picture faces the patient: the RIGHT eye is on the left.</p>
    <${Eyes} works=${drawn} label="Your drawing" chosen=${place} onTouch=${setPlace} />
    <div class="drawing-say" aria-live="polite">
      ${place
        ? html`<${Choice}
            legend=${placeWords(place)}
            name="operation"
            options=${CHOICES}
            value=${work?.operation ?? 'nothing'}
            onChange=${(/** @type {string} */ said) => onDraw(place, said === 'nothing' ? null : said)}
          />`
        : html`<p class="soft">No muscle touched yet.</p>`}
    </div>
    ${drawn.length > 0 &&
    html`<section aria-label="Drawn so far">
      <h2 class="small soft">Drawn so far</h2>
      <ul class="drawn-list">${drawn.map((one) => html`<li key=${`${one.eye} ${one.muscle}`}>${workWords(one)}</li>`)}</ul>
    </section>`}
  </div>`;
}
