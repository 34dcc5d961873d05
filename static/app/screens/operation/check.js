/** The record against the plan, as the engine sees it, before it is saved. */
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Notices } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';
import { EffectShown } from './effect-shown.js';
import { keyOf } from './recording.js';

/** @param {{body: import('./recording.js').Body, review: any, isFresh: boolean, faults: any[]}} props */
export function Check({ body, review, isFresh, faults }) {
  if (!review) return html`<${EngineWait} faults=${faults} />`;
  const reasons = new Map(body.muscles.map((muscle) => [keyOf(muscle), muscle.reason]));
  return html`<div class="stack" aria-busy=${String(!isFresh)}>
    <${Notices} notices=${review.notices} />
    <section class="stack tight" aria-labelledby="differences">
      <h2 id="differences">Against the plan</h2>
      <ul class="operation-differences">
        ${review.differences.map(
          (/** @type {any} */ each) => html`<li key=${keyOf(each)} class=${each.needs_reason ? 'differs-line' : ''}>
            <p>${each.needs_reason && html`<strong class="operation-changed">Changed</strong>${' '}`}${each.text}</p>
            ${reasons.get(keyOf(each)) && html`<p><span class="soft">Why: </span>${reasons.get(keyOf(each))}</p>`}
          </li>`,
        )}
      </ul>
    </section>
    <section class="stack tight" aria-labelledby="complications">
      <h2 id="complications">Complications</h2>
      <p>${body.complications.length === 0 ? 'None recorded.' : body.complications.map(({ complication }) => complication).join(', ')}</p>
    </section>
    <${EffectShown} effect=${review.effect} />
    <p class="small soft">${review.disclaimer}</p>
  </div>`;
}
