/** The content of one option: picture, doses to change, expected result, notices, reasons with sources, table. */
import { Eyes } from '../../parts/eyes/eyes.js';
import { Field } from '../../parts/field/field.js';
import { Fold } from '../../parts/fold/fold.js';
import { Notices } from '../../parts/notice/notice.js';
import { ResidualStrip } from '../../parts/residual-strip/residual-strip.js';
import { reachOf } from '../../parts/residual-strip/scale.js';
import { html } from '../../vendor/preact.js';
import { withChange, withoutChange, withoutOption } from '../../planning/changes.js';
import { DoseEditor } from './dose-editor.js';
import { Reasons } from './reasons.js';
import { TableStamp } from './table-stamp.js';

/** @typedef {import('../../planning/use-planning.js').Planning} Planning */

/** @param {{option: any, proposal: any, planning: Planning, onChange: (fields: Partial<Planning>) => void}} props */
export function OptionBody({ option, proposal, planning, onChange }) {
  const { changes, note } = planning;
    /** What the surgeon has set for it, or null. @param {any} dose @returns {number | null} */
  const ownOf = (dose) => changes.find(({ option: id, eye, muscle }) => id === option.id && eye === dose.eye && muscle === dose.muscle)?.mm ?? null;

  /** @param {any} dose @param {number | null} mm null for the table's again */
  const setDose = (dose, mm) => {
    const place = { option: option.id, eye: dose.eye, muscle: dose.muscle };
    onChange({ changes: mm === null ? withoutChange(changes, place) : withChange(changes, { ...place, mm }) });
  };

  const isChanged = changes.some((change) => change.option === option.id);
  return html`<div class="one-option">
    <div class="one-left stack">
      <${Eyes} works=${option.doses} label=${option.title} />
      <ul class="dose-editors">
        ${option.doses.map((/** @type {any} */ dose) => html`<${DoseEditor} key=${`${dose.eye} ${dose.muscle}`} dose=${dose} own_mm=${ownOf(dose)} onSet=${(/** @type {number | null} */ mm) => setDose(dose, mm)} />`)}
      </ul>
      ${isChanged &&
      option.doses.length > 1 &&
      html`<div class="buttons"><button type="button" class="button" onClick=${() => onChange({ changes: withoutOption(changes, option.id) })}>All back to the table</button></div>`}
    </div>
    <div class="one-right stack">
      <section class="option-expected">
        <h2>Expected after surgery</h2>
        <${ResidualStrip} expected_pd=${option.expected_residual_pd} reach_pd=${reachOf([option.expected_residual_pd])} />
      </section>
      <${Notices} notices=${option.notices} />
      <${Reasons} reasonsFor=${option.reasons_for} reasonsAgainst=${option.reasons_against} />
      <${Fold} title="Note on the plan" holds=${note || 'none'}>
        <${Field} label="Printed on the card" name="plan-note" rows=${3} value=${note} input=${{ maxlength: 2000 }} onInput=${(/** @type {string} */ text) => onChange({ note: text })} />
      <//>
      <${TableStamp} table=${option.table ?? proposal.table} />
      <p class="small soft">${proposal.disclaimer} Engine ${proposal.engine_version}.</p>
    </div>
  </div>`;
}
