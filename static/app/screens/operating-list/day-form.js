/** The day, the team and the place of a list. */
import { shortDateWords } from '../../parts/calendar/date.js';
import { DayField } from '../../parts/day-field/day-field.js';
import { Field } from '../../parts/field/field.js';
import { Fold } from '../../parts/fold/fold.js';
import { html } from '../../vendor/preact.js';

/** @param {{list: import('../../preparing/lists.js').OperatingList, set: (fields: Partial<import('../../preparing/lists.js').OperatingList>) => void, open: boolean}} props */
export function DayForm({ list, set, open }) {
  const holds = [list.team, list.place, shortDateWords(list.on), `from ${list.starts_at}`].filter(Boolean).join(', ');
  return html`<${Fold} title="Day and team" holds=${holds} open=${open}>
    <div class="day-form stack">
      <${DayField} label="Day" name="list-on" value=${list.on} onInput=${(/** @type {string} */ on) => set({ on })} />
      <${Field} label="Team" name="list-team" value=${list.team} onInput=${(/** @type {string} */ team) => set({ team })} input=${{ maxlength: 80 }} />
      <${Field} label="Place" name="list-place" value=${list.place} onInput=${(/** @type {string} */ place) => set({ place })} optional input=${{ maxlength: 120 }} />
      <div class="field">
        <label class="field-label" for="list-starts">First operation at</label>
        <input class="input day-clock" type="time" id="list-starts" value=${list.starts_at} onInput=${(/** @type {any} */ event) => event.currentTarget.value && set({ starts_at: event.currentTarget.value })} />
      </div>
    </div>
  <//>`;
}
