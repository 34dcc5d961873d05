/** The content of one option: picture, doses to change, expected result, notices, reasons with sources, table. */
import { Expectation } from '../../parts/expectation/expectation.js';
import { reachedBy } from '../../parts/expectation/chances.js';
import { Eyes } from '../../parts/eyes/eyes.js';
import { Field } from '../../parts/field/field.js';
import { Fold } from '../../parts/fold/fold.js';
import { Notices } from '../../parts/notice/notice.js';
import { NineGaze } from '../../parts/nine-gaze/nine-gaze.js';
import { reachOf } from '../../parts/residual-strip/scale.js';
import { html } from '../../vendor/preact.js';
import { withChange, withoutChange, withoutOption } from '../../planning/changes.js';
import { isCombined, ownerOf, partsOf } from '../../planning/combining.js';
import { isTaken, ownNote, taken } from '../../planning/own-doses.js';
import { DoseEditor } from './dose-editor.js';
import { OwnColumn } from './own-column.js';
import { Reasons } from './reasons.js';
import { TableStamp } from './table-stamp.js';

/** @typedef {import('../../planning/use-planning.js').Planning} Planning */

/** @param {{option: any, proposal: any, planning: Planning, onChange: (fields: Partial<Planning>) => void, own: import('../../planning/use-own-column.js').OwnOfOption | null}} props */
export function OptionBody({ option, proposal, planning, onChange, own }) {
  const { changes, note, aim } = planning;
  const parts = partsOf(option.id);
  /** What the surgeon has set for it, or null. @param {any} dose @returns {number | null} */
  const ownOf = (dose) => changes.find(({ option: id, eye, muscle }) => parts.includes(id) && eye === dose.eye && muscle === dose.muscle)?.mm ?? null;

  /** @param {any} dose @param {number | null} mm null for the table's again */
  const setDose = (dose, mm) => {
    const place = { option: ownerOf(proposal, option, dose), eye: dose.eye, muscle: dose.muscle };
    onChange({ changes: mm === null ? withoutChange(changes, place) : withChange(changes, { ...place, mm }) });
  };

  const isChanged = changes.some((change) => parts.includes(change.option));
  const after = placesAfter(option);
  return html`<div class="one-option">
    <div class="one-left stack">
      <${Eyes} works=${option.doses} label=${option.title} />
      <ul class="dose-editors">
        ${option.doses.map((/** @type {any} */ dose) => html`<${DoseEditor} key=${`${dose.eye} ${dose.muscle}`} dose=${dose} own_mm=${ownOf(dose)} onSet=${(/** @type {number | null} */ mm) => setDose(dose, mm)} />`)}
      </ul>
      ${isChanged &&
      option.doses.length > 1 &&
      html`<div class="buttons"><button type="button" class="button" onClick=${() => onChange({ changes: parts.reduce(withoutOption, changes) })}>All back to the table</button></div>`}
      ${own && html`<${OwnColumn} own=${own} isPart=${isCombined(option.id)} isTaken=${isTaken(changes, own.suggestion)} onTake=${() => onChange({ changes: taken(changes, own.suggestion) })} note=${ownNote(own.suggestion, own.calibration, (option.table ?? proposal.table).name)} />`}
    </div>
    <div class="one-right stack">
      <section class="option-expected">
        <h2>Expected after surgery</h2>
        <${Expectation} option=${option} reach_pd=${reachOf(reachedBy(option))} aim=${aim} />
      </section>
      ${after.length > 1 && html`<${NineGaze} places=${after} label="Before and expected after, distance" />`}
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

/** The gazes for the picture, as the engine predicts them at distance. @param {any} option @returns {import('../../parts/nine-gaze/scale.js').Place[]} */
function placesAfter({ prediction = null, answers = 'horizontal' }) {
  if (answers !== 'horizontal' || !prediction) return [];
  const outcomes = [...(prediction.distance ? [prediction.distance] : []), ...prediction.gazes].filter(({ range }) => range === 'distance');
  const gazes = [...new Set(outcomes.map(({ gaze }) => gaze))];
  return gazes.map((gaze) => {
    const outcome = outcomes.find((each) => each.gaze === gaze);
    return { gaze, horizontal_pd: outcome.before_pd, after: outcome };
  });
}
