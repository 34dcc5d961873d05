/** One family of operations by one table: cases counted and left out, the effect with its interval, the switch, every past case. */
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { OwnEffect } from '../../parts/own-effect/own-effect.js';
import { PastCases } from '../../parts/past-cases/past-cases.js';
import { Why } from '../../parts/why/why.js';
import { isCombined } from '../../planning/combining.js';
import { useAnswer } from '../../planning/use-answer.js';
import { html } from '../../vendor/preact.js';

const LEFT_OUT = 'case_left_out';
/** Said by the picture and by what is counted. */
const SHOWN = ['calibration_starts', 'calibration_weighed', 'calibration_on_past_cases', LEFT_OUT];

/** @param {{own: import('../../planning/own-families.js').OwnFamily, isOn: boolean, onTurn: (() => void) | null}} props `onTurn` null: who is here may not */
export function Family({ own, isOn, onTurn }) {
  const { answer, faults } = useAnswer('calibrate', { family: own.family, cases: own.cases });
  const found = /** @type {any} */ (answer);
  const heading = `own-${own.family}-${own.table}`;
  return html`<section class="own-family card stack" aria-labelledby=${heading}>
    <div>
      <h2 id=${heading}>${own.title}</h2>
      <p class="small soft">Table ${own.tableName}</p>
    </div>
    ${!found && html`<${EngineWait} faults=${faults} />`}
    ${found && html`<${Learned} found=${found} own=${own} />`}
    ${!own.isSuggested
      ? html`<p class="small soft">Counted by itself, and shown beside no dose: ${isCombined(own.family) ? 'several operations were done at one sitting' : 'it does not answer a horizontal deviation'}.</p>`
      : onTurn
      ? html`<label class="own-switch"><input type="checkbox" checked=${isOn} onChange=${onTurn} /> <span>Show beside the table's dose</span></label>`
      : html`<p class="small soft">A surgeon switches this on for the surgeon's own cases.</p>`}
    ${found && html`<${PastCases} past=${found.past} operations=${own.done} />`}
  </section>`;
}

/** @param {{found: any, own: import('../../planning/own-families.js').OwnFamily}} props */
function Learned({ found, own }) {
  const leftOut = found.statements.filter((/** @type {any} */ { code }) => code === LEFT_OUT);
  const unmeasured = own.operations - own.cases.length;
  return html`
    <p class="own-counted"><strong>${found.cases}</strong> of ${own.operations} operation${own.operations === 1 ? '' : 's'} counted</p>
    <${OwnEffect} effect=${found.effect} />
    ${found.statements
      .filter((/** @type {any} */ { code }) => !SHOWN.includes(code))
      .map((/** @type {any} */ { code, text }) => html`<p key=${code}>${text}</p>`)}
    ${(leftOut.length > 0 || unmeasured > 0) &&
    html`<ul class="own-left-out small">
      ${unmeasured > 0 && html`<li>Left out, ${unmeasured}: no visit with a measurement, or a plan that promised no figure.</li>`}
      ${leftOut.map((/** @type {any} */ { text }) => html`<li key=${text}>${text}</li>`)}
    </ul>`}
    <p class="small"><${Why} label=${`How this was learned: ${own.title}`} steps=${found.statements}>How this was learned<//></p>
  `;
}
