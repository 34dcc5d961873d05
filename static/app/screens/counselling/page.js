/** The page itself, as it is shown and printed: everything on it is in the reader's language, and runs as that language runs. */
import { ReviewMark } from '../../parts/language/language.js';
import { html } from '../../vendor/preact.js';
import { Muscles } from './muscles.js';
import { Passage } from './passage.js';
import { Told } from './told.js';

/** @typedef {import('../../words/speaker.js').Speaker} Speaker */

/** @param {{page: any, speaker: Speaker, both: boolean, signature?: import('../../store/envelope.js').LedgerRecord}} props `page` is a `CounsellingPage` of the engine */
export function CounsellingPage({ page, speaker, both, signature }) {
  const { say } = speaker;
  const passages = (/** @type {any[]} */ list) => list.map((each) => html`<${Passage} key=${each.code} passage=${each} speaker=${speaker} both=${both} />`);
  return html`<article class="counsel-page stack wide" lang=${speaker.language} dir=${speaker.direction} aria-label=${say('Page for the patient')}>
    <${ReviewMark} speaker=${speaker} />
    ${page.deferring.map((/** @type {any} */ said) => html`<${Told} key=${said.text} said=${said} speaker=${speaker} both=${both} strong=${true} />`)}
    ${!signature && html`<p><strong>${say('This plan is not signed yet. It can still change.')}</strong></p>`}
    <${Muscles} page=${page} speaker=${speaker} both=${both} />
    ${passages(page.expected)}
    <section class="stack" aria-label=${say('What comes when')}>
      <h2>${say('What comes when')}</h2>
      <div class="counsel-columns">${passages(page.days)}</div>
    </section>
    <section class="stack" aria-label=${say('What can go wrong')}>
      <h2>${say('What can go wrong')}</h2>
      ${passages(page.risks)}
    </section>
    <div class="counsel-urgent">${passages([page.call])}</div>
    <p class="counsel-telephone">${say('Telephone of the clinic:')}</p>
    <footer class="small stack tight">
      ${signature && html`<p>${say('Check word of the plan: {word}', { word: signature.body.check_word })}</p>`}
      <p>${say('Amounts from the table {table}, engine {version}.', { table: page.table.name, version: page.engine_version })}</p>
    </footer>
  </article>`;
}
