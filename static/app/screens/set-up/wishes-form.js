/** What the surgeon knows or wishes beside the plan: it decides what the rules say. */
import { Choice } from '../../parts/choice/choice.js';
import { DayField } from '../../parts/day-field/day-field.js';
import { Fold } from '../../parts/fold/fold.js';
import { localTime } from '../../store/envelope.js';
import { html } from '../../vendor/preact.js';

const YES_NO = [
  { value: false, words: 'No' },
  { value: true, words: 'Yes' },
];
const COOPERATION = [
  { value: 'unknown', words: 'Not known' },
  { value: 'yes', words: 'Yes' },
  { value: 'no', words: 'No' },
];

const QUESTIONS = /** @type {const} */ ([
  ['adjustable', 'Is a suture to be adjusted?'],
  ['avoid_general', 'Is general anaesthesia to be avoided?'],
  ['sedation_team', 'Are sedation and a team used to patients who are awake at hand?'],
  ['lost_muscle', 'Is a muscle thought to have slipped or been lost?'],
]);

/** @param {{prepared: import('../../preparing/set-ups.js').Prepared, set: (fields: Partial<import('../../preparing/set-ups.js').Prepared>) => void, open: boolean}} props */
export function WishesForm({ prepared, set, open }) {
  const { on, wishes } = prepared;
  const wish = (/** @type {Partial<typeof wishes>} */ fields) => set({ wishes: { ...wishes, ...fields } });
  const said = QUESTIONS.filter(([name]) => wishes[name]).length + (wishes.cooperation === 'unknown' ? 0 : 1) + (wishes.block_at ? 1 : 0);

  return html`<section class="set-up-wishes stack" aria-label="Day and wishes">
    <${DayField} label="Day of the operation" name="set-up-on" value=${on} onInput=${(/** @type {string} */ value) => set({ on: value, wishes: { ...wishes, block_at: blockAt(value, clockOf(wishes.block_at)) } })} />
    <${Fold} title="Wishes and circumstances" holds=${said === 0 ? 'nothing special' : `${said} said`} open=${open}>
      <div class="stack">
        ${QUESTIONS.map(([name, words]) => html`<${Choice} key=${name} legend=${words} name=${`wish-${name}`} options=${YES_NO} value=${wishes[name]} onChange=${(/** @type {boolean} */ value) => wish({ [name]: value })} />`)}
        <${Choice} legend="Can the patient keep still while awake?" name="wish-cooperation" options=${COOPERATION} value=${wishes.cooperation} onChange=${(/** @type {any} */ value) => wish({ cooperation: value })} />
        <div class="field">
          <label class="field-label" for="wish-block">When is a local block given, if there is one? <span class="field-optional">optional</span></label>
          <input class="input set-up-clock" type="time" id="wish-block" value=${clockOf(wishes.block_at)} onInput=${(/** @type {any} */ event) => wish({ block_at: blockAt(on, event.currentTarget.value) })} />
        </div>
      </div>
    <//>
  </section>`;
}

/** @param {string | null} moment ISO 8601 */
const clockOf = (moment) => moment?.slice(11, 16) ?? '';

/**
 * The moment at this place, with its offset.
 *
 * @param {string} on
 * @param {string} clock `13:30`, or nothing
 */
const blockAt = (on, clock) => (clock ? localTime(new Date(`${on}T${clock}`)) : null);
