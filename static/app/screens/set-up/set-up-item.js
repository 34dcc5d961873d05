/** One item of the sheet: what stands, why, what it is warned of; the other ways folded beneath, and the surgeon's own choice. */
import { Fold } from '../../parts/fold/fold.js';
import { Notice, Notices } from '../../parts/notice/notice.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { html, useState } from '../../vendor/preact.js';
import { OwnChoice } from './own-choice.js';

const COMMON = 'common practice';

/** @param {{item: any, onChoose?: ((override: import('../../preparing/set-ups.js').Override | null) => void) | false}} props a `SetUpItem` of the engine */
export function SetUpItem({ item, onChoose }) {
  const [isChoosing, setChoosing] = useState(false);
  return html`<section class="set-up-item card stack tight" aria-label=${item.title}>
    <h2 class="set-up-title soft">${item.title}</h2>
    <p class="set-up-choice">${item.choice_words}</p>
    ${item.practice_words && html`<p>${item.practice_words}</p>`}
    <ul class="set-up-reasons">${item.reasons.map((/** @type {any} */ reason) => html`<li key=${reason.code}><${Said} statement=${reason} /></li>`)}</ul>
    <${Notices} notices=${item.cautions} />
    <${Fold} title="Other ways" holds=${item.alternatives.map((/** @type {any} */ way) => way.words.toLowerCase()).join('; ')}>
      <div class="stack">
        ${item.alternatives.map((/** @type {any} */ way) =>
          way.refused
            ? html`<${Notice} key=${way.id} level="stop" provenance=${way.refused.provenance}><p><strong>${way.words}</strong></p><p>${way.refused.text}</p><//>`
            : html`<div key=${way.id}><p><strong>${way.words}</strong></p><${Said} statement=${way.merit} /></div>`,
        )}
        ${item.would_change.length > 0 &&
        html`<div>
          <h3>What would change it</h3>
          ${item.would_change.map((/** @type {any} */ change) => html`<${Said} key=${change.code} statement=${change} />`)}
        </div>`}
      </div>
    <//>
    ${onChoose && html`<div class="buttons"><button type="button" class="button" aria-haspopup="dialog" onClick=${() => setChoosing(true)}>Choose another way</button></div>`}
    ${onChoose && isChoosing && html`<${OwnChoice} item=${item} onChoose=${onChoose} onClose=${() => setChoosing(false)} />`}
  </section>`;
}

/** A sentence, with its source where that is more than common practice. @param {{statement: any}} props */
function Said({ statement }) {
  return html`<p>${statement.text}</p>
    ${statement.provenance.mark !== COMMON && html`<${Provenance} of=${statement.provenance} />`}`;
}
