/** What is to be done at one sitting: the engine's judgement of the whole, or what is still to be added. */
import { Notices } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';
import { stopsOf } from '../../planning/levels.js';

/** @param {{combine: string[], offered: any[], combined: any, card: unknown, onApart: () => void}} props `card` shows the combined option */
export function Together({ combine, offered, combined, card, onApart }) {
  if (combine.length === 0) return null;
  const titles = offered.filter(({ id }) => combine.includes(id)).map(({ title }) => title);
  return html`<section class="together stack" aria-label="Together at one sitting">
    <div class="compare-bar">
      <h2 class="options-heading">Together at one sitting</h2>
      <button type="button" class="button" onClick=${onApart}>Take apart</button>
    </div>
    ${combined
      ? stopsOf(combined).length > 0
        ? html`<p class="option-title">${combined.title}</p><${Notices} notices=${stopsOf(combined)} />`
        : card
      : html`<p>${titles.join('; ') || combine.join('; ')}. Mark another operation that is to be done with it.</p>`}
  </section>`;
}
