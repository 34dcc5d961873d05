/** What the plan expected beside what is expected of what was done; where no table answers, that is said. */
import { Fold } from '../../parts/fold/fold.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { spanWords } from '../../parts/residual-strip/scale.js';
import { html } from '../../vendor/preact.js';
import { deviationWords } from '../../words/reading.js';

/** @param {{effect: any}} props an `Effect` of the engine */
export function EffectShown({ effect }) {
  const { planned_residual_pd: planned, done_residual_pd: done } = effect;
  return html`<section class="stack tight" aria-labelledby="effect">
    <h2 id="effect">Expected to remain</h2>
    <dl class="operation-effect">
      <div><dt>By the plan</dt><dd>${planned === null ? 'no horizontal figure' : residualWords(planned)}</dd></div>
      <div><dt>By what was done</dt><dd>${done === null ? 'cannot be told' : residualWords(done)}</dd></div>
    </dl>
    ${effect.done && html`<p class="soft">In 95 of 100 between ${spanWords(effect.done)}; within ${effect.done.within_pd} Δ in ${effect.done.within_percent} %</p>`}
    <${Fold} title="How this was worked out" holds=${effect.statements.map((/** @type {any} */ each) => each.provenance.mark).join(', ')}>
      ${effect.statements.map((/** @type {any} */ each) => html`<div key=${each.code}><p>${each.text}</p><${Provenance} of=${each.provenance} /></div>`)}
    <//>
  </section>`;
}

/** @param {number} pd */
const residualWords = (pd) => (pd === 0 ? 'straight' : deviationWords('horizontal', pd));
