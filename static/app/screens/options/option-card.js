/** One option among others: picture, muscles, where the eye is expected to end, the strongest reasons, its own notices. */
import { DoseLine } from '../../parts/dose-line/dose-line.js';
import { Eyes } from '../../parts/eyes/eyes.js';
import { Notices } from '../../parts/notice/notice.js';
import { Expectation } from '../../parts/expectation/expectation.js';
import { html } from '../../vendor/preact.js';
import { OwnLine } from './own-line.js';
import { Reasons } from './reasons.js';
import { TableStamp } from './table-stamp.js';

/**
 * @param {object} props
 * @param {any} props.option an `Option` of the engine
 * @param {any} props.table a `TableStamp` of the engine, for options that bring none of their own
 * @param {import('./shared.js').Shared} props.common said once for all, so not here
 * @param {number} props.reach_pd
 * @param {string} props.path of the one option
 * @param {string} [props.aim]
 * @param {boolean} [props.isCompared]
 * @param {(() => void) | null} [props.onCompare]
 * @param {boolean} [props.isTogether]
 * @param {(() => void) | null} [props.onTogether]
 * @param {import('../../planning/use-own-column.js').OwnOfOption | null} [props.own] what the surgeon's own results say of it
 */
export function OptionCard({ option, table, common, reach_pd, path, aim, isCompared = false, onCompare = null, isTogether = false, onTogether = null, own: ownResults = null }) {
  /** @param {any[]} statements */
  const own = (statements) => statements.filter((statement) => !common.has(statement));
  const heading = `option-${option.id}`;
  return html`<article class=${isCompared || isTogether ? 'option card compared' : 'option card'} aria-labelledby=${heading}>
    <h2 class="option-title" id=${heading}>${option.title}</h2>
    <${Eyes} works=${option.doses} label=${option.title} />
    <ul class="dose-lines">
      ${option.doses.map((/** @type {any} */ dose) => html`<${DoseLine} key=${`${dose.eye} ${dose.muscle}`} dose=${dose} />`)}
    </ul>
    ${ownResults && html`<${OwnLine} own=${ownResults} />`}
    <div class="option-expected">
      <h3 class="small soft">Expected after surgery</h3>
      <${Expectation} option=${option} reach_pd=${reach_pd} aim=${aim} />
    </div>
    <${Reasons} strongest=${2} reasonsFor=${own(option.reasons_for)} reasonsAgainst=${own(option.reasons_against)} />
    <div class="option-notices"><${Notices} notices=${own(option.notices)} /></div>
    <footer class="option-foot">
      <${TableStamp} table=${option.table ?? table} />
      <div class="option-steps">
        <a class="button" href=${`#${path}`}>Change or choose</a>
        ${onCompare &&
        html`<label class="option-compare"><input type="checkbox" checked=${isCompared} onChange=${onCompare} /> <span>compare</span></label>`}
        ${onTogether &&
        html`<label class="option-compare"><input type="checkbox" checked=${isTogether} onChange=${onTogether} /> <span>at the same sitting</span></label>`}
      </div>
    </footer>
  </article>`;
}
