/** When patients are seen after an operation in this clinic: as common practice, or the clinic's own visits with their days. */
import { Field, FieldFault, describedBy } from '../../parts/field/field.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';
import { afterLast, daysWords, typedDay } from './visit-days.js';

/** @typedef {import('./visit-days.js').UsualVisit} UsualVisit */
/** @typedef {import('../../parts/fault-list/fault-list.js').FaultFacts} FaultFacts */

/**
 * @param {object} props
 * @param {{usual: UsualVisit[], standing: UsualVisit[], provenance: any}} props.form of the engine
 * @param {UsualVisit[] | null} props.own as they are being edited; null: as common practice
 * @param {readonly FaultFacts[]} props.faults
 * @param {((visits: UsualVisit[] | null) => void) | false} props.set
 */
export function UsualVisits({ form, own, faults, set }) {
  if (!set) return html`<${Listed} visits=${form.standing} /><${Provenance} of=${form.provenance} />`;
  if (!own) {
    return html`<p>As common practice:</p>
      <${Listed} visits=${form.usual} />
      <div class="buttons"><button type="button" class="button" onClick=${() => set(form.usual)}>Set this clinic's own</button></div>`;
  }
  return html`<p class="small soft">
      Days are counted from the operation; both days are included. A visit is known again by its name: where only its days change, keep the name, or who came for it counts as not seen. What
      was planned otherwise for one patient stays.
    </p>
    ${own.map(
      (visit, place) => html`<${Row}
        key=${place}
        place=${place}
        visit=${visit}
        faults=${faults.filter(({ field }) => field === `visits.${place}` || field?.startsWith(`visits.${place}.`))}
        onChange=${(/** @type {Partial<UsualVisit>} */ fields) => set(own.with(place, { ...visit, ...fields }))}
        onDrop=${own.length > 1 ? () => set(own.toSpliced(place, 1)) : null}
      />`,
    )}
    <div class="buttons">
      <button type="button" class="button" onClick=${() => set([...own, afterLast(own)])}>Add a visit</button>
      <button type="button" class="button bare" onClick=${() => set(null)}>As common practice</button>
    </div>`;
}

/** @param {{visits: UsualVisit[]}} props */
function Listed({ visits }) {
  return html`<ul>${visits.map((visit) => html`<li key=${visit.name}>${visit.name}: ${daysWords(visit)}</li>`)}</ul>`;
}

/** @param {{place: number, visit: UsualVisit, faults: FaultFacts[], onChange: (fields: Partial<UsualVisit>) => void, onDrop: (() => void) | null}} props */
function Row({ place, visit, faults, onChange, onDrop }) {
  const faultOf = (/** @type {string} */ name) => faults.find(({ field }) => field === `visits.${place}.${name}`);
  const ofAll = faults.find(({ field }) => field === `visits.${place}`);
  return html`<section class="card stack tight" aria-label=${visit.name || `Visit ${place + 1}`}>
    <${Field} label="Visit" name=${`usual-visit-${place}`} value=${visit.name} fault=${faultOf('name') ?? ofAll} input=${{ maxlength: 40 }} onInput=${(/** @type {string} */ name) => onChange({ name })} />
    <div class="usual-visit-days">
      <${Day} label="From day" name=${`usual-visit-from-${place}`} value=${visit.first_day} fault=${faultOf('first_day')} onDay=${(/** @type {number} */ first_day) => onChange({ first_day })} />
      <${Day} label="Until day" name=${`usual-visit-until-${place}`} value=${visit.last_day} fault=${faultOf('last_day')} onDay=${(/** @type {number} */ last_day) => onChange({ last_day })} />
    </div>
    ${onDrop && html`<button type="button" class="button bare" onClick=${onDrop}>Drop this visit</button>`}
  </section>`;
}

/** @param {{label: string, name: string, value: number, fault?: FaultFacts, onDay: (day: number) => void}} props */
function Day({ label, name, value, fault, onDay }) {
  return html`<div class="field">
    <label class="field-label" for=${name}>${label}</label>
    <input class="input" id=${name} type="number" inputmode="numeric" min="1" max="20000" value=${value || ''} ...${describedBy(name, { fault })} onInput=${(/** @type {any} */ event) => onDay(typedDay(event.currentTarget.value))} />
    <${FieldFault} name=${name} fault=${/** @type {any} */ (fault)} />
  </div>`;
}
