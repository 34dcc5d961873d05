/** A plan as it will be signed: picture, muscles, expected result, table and engine. */
import { DoseLine } from '../../parts/dose-line/dose-line.js';
import { Eyes } from '../../parts/eyes/eyes.js';
import { Expectation } from '../../parts/expectation/expectation.js';
import { reachedBy } from '../../parts/expectation/chances.js';
import { reachOf } from '../../parts/residual-strip/scale.js';
import { html } from '../../vendor/preact.js';
import { TableStamp } from '../options/table-stamp.js';

/** @param {{plan: import('../../store/envelope.js').LedgerRecord}} props */
export function PlanShown({ plan: { body } }) {
  const { option, table, engine_version, note } = body;
  return html`<section class="plan-shown card stack" aria-label="The plan">
    <h2>${option.title}</h2>
    <${Eyes} works=${option.doses} label=${option.title} />
    <ul class="dose-lines">
      ${option.doses.map((/** @type {any} */ dose) => html`<${DoseLine} key=${`${dose.eye} ${dose.muscle}`} dose=${dose} />`)}
    </ul>
    <${Expectation} option=${option} reach_pd=${reachOf(reachedBy(option))} aim=${body.case.aim} />
    ${note && html`<p><span class="soft">Note: </span>${note}</p>`}
    <${TableStamp} table=${option.table ?? table} />
    <p class="small soft">Engine ${engine_version}</p>
  </section>`;
}
