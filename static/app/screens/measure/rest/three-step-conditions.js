/** What is known of the conditions in which the three-step test does not hold. */
import { Choice } from '../../../parts/choice/choice.js';
import { html } from '../../../vendor/preact.js';
import { BREAKERS } from './known.js';

/** @typedef {import('../examination.js').Validity} Validity */

const PRESENCE = [
  { value: 'absent', words: 'absent' },
  { value: 'present', words: 'present' },
  { value: null, words: 'not known' },
];

/** @param {{conditions: Validity[], onChange: (conditions: Validity[]) => void}} props */
export function ThreeStepConditions({ conditions, onChange }) {
  /** @param {string} breaker @param {string | null} presence */
  const set = (breaker, presence) =>
    onChange(
      BREAKERS.flatMap((each) => {
        const said = each === breaker ? presence : conditions.find((known) => known.breaker === each)?.presence;
        return said ? [{ breaker: each, presence: said }] : [];
      }),
    );
  return html`<div class="stack">
    <p class="small soft">The test names one weak muscle only where none of these is present.</p>
    <div class="buttons">
      <button type="button" class="button" onClick=${() => onChange(BREAKERS.map((breaker) => ({ breaker, presence: 'absent' })))}>All absent</button>
    </div>
    ${BREAKERS.map(
      (breaker, index) => html`<${Choice}
        key=${breaker}
        legend=${breaker}
        name=${`breaker-${index}`}
        options=${PRESENCE}
        value=${(({ presence }) => (presence === 'unknown' ? null : presence))(conditions.find((known) => known.breaker === breaker) ?? { presence: 'unknown' })}
        onChange=${(/** @type {string | null} */ presence) => set(breaker, presence)}
      />`,
    )}
  </div>`;
}
