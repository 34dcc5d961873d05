/** Drawing and plan side by side, and in words where they part. Neither is called wrong: the surgeon decides which one is. */
import { Eyes } from '../../parts/eyes/eyes.js';
import { html } from '../../vendor/preact.js';
import { workWords } from '../../words/anatomy.js';

/** @param {{plan: import('../../store/envelope.js').LedgerRecord, signing: import('./signing.js').Signing}} props */
export function Differs({ plan, signing: { drawn, comparison } }) {
  return html`<div class="stack">
    <p>Nothing is signed. Look at both, then draw again or change the plan.</p>
    <div class="differs">
      <section class="card stack tight" aria-labelledby="your-drawing">
        <h2 id="your-drawing">Your drawing</h2>
        <${Eyes} works=${drawn} label="Your drawing" />
        <${Only} title="Only in your drawing" works=${comparison?.unexpected ?? []} />
      </section>
      <section class="card stack tight" aria-labelledby="the-plan">
        <h2 id="the-plan">The plan</h2>
        <${Eyes} works=${plan.body.option.doses} label="The plan" />
        <${Only} title="Only in the plan" works=${comparison?.missing ?? []} />
      </section>
    </div>
  </div>`;
}

/** @param {{title: string, works: any[]}} props */
function Only({ title, works }) {
  return html`<div>
    <h3 class="small soft">${title}</h3>
    ${works.length === 0
      ? html`<p>nothing</p>`
      : html`<ul class="only-list">${works.map((work) => html`<li key=${workWords(work)}><strong>${workWords(work)}</strong></li>`)}</ul>`}
  </div>`;
}
