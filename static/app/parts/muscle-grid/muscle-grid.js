/** The six muscles of each eye as buttons that say what they hold; the one touched opens what can be said of it. */
import { html, useState } from '../../vendor/preact.js';
import { EYES, EYE_WORDS, MUSCLES, MUSCLE_WORDS, placeWords } from '../../words/anatomy.js';

/** @typedef {{eye: import('../../words/anatomy.js').Eye, muscle: import('../../words/anatomy.js').Muscle}} Place */

/**
 * @param {object} props
 * @param {(place: Place) => {shown: string, said: string}} props.holdsOf what the muscle holds, as shown and as read out
 * @param {(place: Place) => unknown} props.panelOf what can be said of the open one
 */
export function MuscleGrid({ holdsOf, panelOf }) {
  const [place, setPlace] = useState(/** @type {Place | null} */ (null));
  return html`<div class="muscle-grid">
    ${EYES.map((eye) => {
      const open = place?.eye === eye ? place : null;
      return html`<fieldset class="muscle-eye" key=${eye}>
        <legend class="side">${EYE_WORDS[eye]}</legend>
        <div class="muscle-buttons">
          ${MUSCLES.map((muscle) => {
            const { shown, said } = holdsOf({ eye, muscle });
            return html`<button
              key=${muscle}
              type="button"
              class="muscle-button"
              aria-expanded=${String(open?.muscle === muscle)}
              onClick=${() => setPlace(open?.muscle === muscle ? null : { eye, muscle })}
            >
              <span class="unseen">${placeWords({ eye, muscle })}: ${said}</span>
              <span class="muscle-name" aria-hidden="true">${MUSCLE_WORDS[muscle]}</span>
              <strong class="muscle-holds" aria-hidden="true">${shown}</strong>
            </button>`;
          })}
        </div>
        ${open && html`<div class="muscle-panel">${panelOf(open)}</div>`}
      </fieldset>`;
    })}
  </div>`;
}
