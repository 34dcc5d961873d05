/** How far a patient has come: the word, and beside it the four stations of the line with those reached filled. */
import { STATES } from '../../screens/patients/progress.js';
import { html } from '../../vendor/preact.js';
import { marked, saidHere } from '../../words/say.js';

const WORDS = { 'to measure': marked('To measure'), measured: marked('Measured'), planned: marked('Planned'), signed: marked('Signed') };

/** @param {{state: import('../../screens/patients/progress.js').State}} props */
export function StateWord({ state }) {
  const reached = STATES.indexOf(state);
  return html`<span class="state-word">
    <svg class="state-line" viewBox="0 0 46 10" aria-hidden="true" focusable="false">
      <path d="M5 5h36" />
      ${STATES.map((name, index) => html`<circle key=${name} cx=${5 + 12 * index} cy="5" r="3.6" class=${index <= reached && reached > 0 ? 'reached' : ''} />`)}
    </svg>
    <span>${saidHere(WORDS[state])}</span>
  </span>`;
}
