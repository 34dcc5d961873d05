/** The app's own sign: the nine gazes, with the primary position the largest. */
import { html } from '../../vendor/preact.js';

const PLACES = [10, 24, 38];

export function Emblem() {
  return html`<svg class="emblem" viewBox="0 0 48 48" aria-hidden="true" focusable="false">
    ${PLACES.flatMap((y) => PLACES.map((x) => html`<circle key=${`${x} ${y}`} cx=${x} cy=${y} r=${x === 24 && y === 24 ? 6 : 2.2} />`))}
  </svg>`;
}
