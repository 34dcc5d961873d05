/** The search field and the four states of the line with how many patients stand at each. */
import { useObservable } from '../../observable.js';
import { Mark } from '../../parts/mark/mark.js';
import { html } from '../../vendor/preact.js';
import { marked, said, say } from '../../words/say.js';
import { narrowing } from './narrowing.js';
import { STATES } from './progress.js';

const WORDS = { 'to measure': marked('to measure'), measured: marked('measured'), planned: marked('planned'), signed: marked('signed') };

/** @param {{entries: import('./worklist.js').Entry[], found: number}} props */
export function Search({ entries, found }) {
  const { typed, state } = useObservable(narrowing);
  const count = (/** @type {string} */ wanted) => entries.filter((entry) => entry.state === wanted).length;
  const narrow = (/** @type {object} */ change) => narrowing.set({ ...narrowing.get(), ...change });

  return html`<search class="patient-search">
    <label class="search-field">
      <span class="unseen">${say('Search by name, number or birth date')}</span>
      <${Mark} name="search" />
      <input
        class="input"
        type="search"
        placeholder=${say('Name, number or birth date')}
        autocomplete="off"
        autocorrect="off"
        spellcheck=${false}
        enterkeyhint="search"
        value=${typed}
        onInput=${(event) => narrow({ typed: event.currentTarget.value })}
      />
    </label>
    <div class="search-states" role="group" aria-label=${say('How far they have come')}>
      ${STATES.map(
        (wanted) => html`<button
          type="button"
          class="search-state"
          key=${wanted}
          aria-pressed=${String(state === wanted)}
          onClick=${() => narrow({ state: state === wanted ? null : wanted })}
        >
          <strong>${count(wanted)}</strong><span>${said(WORDS[wanted])}</span>
        </button>`,
      )}
    </div>
    <p class="unseen" role="status">${typed || state ? say('{count} found', { count: found }) : ''}</p>
  </search>`;
}
