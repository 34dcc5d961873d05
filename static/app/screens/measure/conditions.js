/** At which range and with or without correction the readings are taken: always in sight, one touch to change. */
import { Choice } from '../../parts/choice/choice.js';
import { html } from '../../vendor/preact.js';
import { countUnder } from './cells.js';

/** @param {{sitting: import('./sitting.js').Sitting, onTurn: (conditions: {range?: string, correction?: string}) => void}} props */
export function Conditions({ sitting: { draft, range, correction, taking }, onTurn }) {
  const { condition } = taking;
  /** @param {number} count */
  const read = (count) => (count ? `${count} read` : undefined);
  return html`<div class="conditions">
    <${Choice}
      legend="Range"
      quiet=${true}
      name="range"
      value=${range}
      options=${[
        { value: 'distance', words: 'Distance', hint: read(countUnder(draft.readings, { range: 'distance', correction, condition })) },
        { value: 'near', words: 'Near', hint: read(countUnder(draft.readings, { range: 'near', correction, condition })) },
      ]}
      onChange=${(/** @type {string} */ chosen) => onTurn({ range: chosen })}
    />
    <${Choice}
      legend="Spectacles or lenses"
      quiet=${true}
      name="correction"
      value=${correction}
      options=${[
        { value: 'with', words: 'With', hint: 'correction' },
        { value: 'without', words: 'Without', hint: 'correction' },
      ]}
      onChange=${(/** @type {string} */ chosen) => onTurn({ correction: chosen })}
    />
  </div>`;
}
