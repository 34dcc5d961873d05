/** Anaesthesia, the day and the times; and the times that an adjustable suture counts from. */
import { AdjustWindow } from '../../parts/adjust-window/adjust-window.js';
import { Choice } from '../../parts/choice/choice.js';
import { today } from '../../parts/calendar/date.js';
import { Field } from '../../parts/field/field.js';
import { MomentField } from '../../parts/moment-field/moment-field.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';
import { ANAESTHESIA_CHOICES } from '../../words/operation.js';
import { isAdjustable, told } from './recording.js';

/** @typedef {import('./recording.js').Recording} Recording */

/** @param {{recording: Recording, review: any, surgeons: string[], onKeep: (next: Recording) => void}} props `surgeons`: whose work this account may write down, its own first */
export function Around({ recording, review, surgeons, onKeep }) {
  const { body } = recording;
  /** @param {Record<string, any>} fields */
  const tell = (fields) => onKeep(told(recording, fields));
  return html`<div class="stack">
    ${surgeons.length > 1 &&
    html`<${Choice} legend="Who operated" name="surgeon_name" options=${surgeons.map((value, index) => ({ value, words: value, hint: index === 0 ? 'you' : 'you are named as who recorded it' }))} value=${body.surgeon_name} onChange=${(/** @type {string} */ surgeon_name) => tell({ surgeon_name })} />`}
    <${Choice} legend="Anaesthesia" name="anaesthesia" options=${ANAESTHESIA_CHOICES} value=${body.anaesthesia} onChange=${(/** @type {string | null} */ anaesthesia) => tell({ anaesthesia })} />
    <${Field} label="Operated on" name="operated_on" value=${body.operated_on} input=${{ type: 'date', max: today(), required: true }} onInput=${(/** @type {string} */ operated_on) => operated_on && tell({ operated_on })} />
    <${MomentField} label="Operation began" name="started_at" value=${body.started_at} onChange=${(/** @type {string | null} */ started_at) => tell({ started_at })} />
    <${MomentField} label="Operation ended" name="ended_at" value=${body.ended_at} onChange=${(/** @type {string | null} */ ended_at) => tell({ ended_at })} />
    ${isAdjustable(body) &&
    html`<section class="card stack" aria-label="The adjustable suture">
      <h2>The adjustable suture</h2>
      <${MomentField} label="Suture tied" name="tied_at" value=${body.tied_at} onChange=${(/** @type {string | null} */ tied_at) => tell({ tied_at })} />
      <${MomentField} label="Last local block, if any" name="block_at" value=${body.block_at} onChange=${(/** @type {string | null} */ block_at) => tell({ block_at })} />
      ${body.window && html`<${AdjustWindow} window=${body.window} />`}
      ${(review?.window_statements ?? []).map((/** @type {any} */ statement) => html`<div key=${statement.code}><p>${statement.text}</p><${Provenance} of=${statement.provenance} /></div>`)}
    </section>`}
    <${Field} label="Note" name="note" rows=${4} value=${body.note} input=${{ maxlength: 2000 }} onInput=${(/** @type {string} */ note) => tell({ note })} />
  </div>`;
}
