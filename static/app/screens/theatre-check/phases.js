/** The three phases of a card: passed by whom and when, what stopped them, and which one comes next. */
import { momentWords } from '../../parts/calendar/ago.js';
import { Mark } from '../../parts/mark/mark.js';
import { html } from '../../vendor/preact.js';
import { PHASES } from '../../planning/theatre-checks.js';

/** @param {{phases: import('../../planning/theatre-checks.js').PhaseState[]}} props */
export function Phases({ phases }) {
  return html`<ol class="check-phases">
    ${phases.map(
      (state, place) => html`<li class="card stack tight" key=${state.phase}>
        <h2>${state.words}</h2>
        <${State} state=${state} when=${PHASES[place].when} />
        ${state.stops.map((check) => html`<${Stopped} key=${check.id} check=${check} />`)}
      </li>`,
    )}
  </ol>`;
}

/** @param {{state: import('../../planning/theatre-checks.js').PhaseState, when: string}} props */
function State({ state: { passed, isNext }, when }) {
  if (!passed) return html`<p class=${isNext ? undefined : 'soft'}>${isNext ? html`<strong>Next</strong>, ${when}` : `Not yet: ${when}`}</p>`;
  const { first, second, closed_at, entries } = passed.body;
  const words = entries.filter((/** @type {any} */ entry) => entry.words || entry.going_on);
  return html`<p class="check-passed"><${Mark} name="done" /><strong>Passed</strong></p>
    <p>${first.name}, ${first.role}, and ${second.name}, ${second.role}, ${momentWords(closed_at)}</p>
    ${words.map((/** @type {any} */ entry) => html`<p key=${entry.step}>Told (${entry.step}): <strong>${entry.words || `${entry.going_on.surgeon} goes on: ${entry.going_on.reason}`}</strong></p>`)}`;
}

/** @param {{check: import('../../store/envelope.js').LedgerRecord}} props */
const Stopped = ({ check: { body } }) => html`<p class="check-was-stopped"><${Mark} name="stop" /><span><strong>Stopped</strong> ${momentWords(body.closed_at)}: ${body.stop.text}</span></p>`;
