/** What may be done beside the horizontal operation, by the deviation that it answers; the first two of each in sight. */
import { Fold } from '../../parts/fold/fold.js';
import { html } from '../../vendor/preact.js';
import { stopsOf } from '../../planning/levels.js';
import { Stopped } from './stopped.js';

const IN_SIGHT = 2;

/** @type {Record<string, string>} by the engine's `Answers` */
const TITLES = {
  vertical: 'For the vertical deviation',
  dissociated: 'For the dissociated vertical deviation',
  torsion: 'For torsion',
  pattern: 'For the pattern',
};

/** @param {{additions: any[], cardOf: (option: any) => unknown, pathOf: (id: string) => string}} props */
export function Additions({ additions, cardOf, pathOf }) {
  return Object.entries(TITLES).map(([answers, title]) => {
    const own = additions.filter((option) => option.answers === answers);
    if (own.length === 0) return null;
    const open = own.filter((option) => stopsOf(option).length === 0);
    const more = open.slice(IN_SIGHT);
    return html`<section class="stack" key=${answers} aria-label=${title}>
      <h2 class="options-heading">${title}</h2>
      <div class=${`options options-${Math.min(open.length, IN_SIGHT)}`}>${open.slice(0, IN_SIGHT).map(cardOf)}</div>
      ${more.length > 0 &&
      html`<${Fold} title=${`${more.length} more`} holds=${more.map((option) => option.title).join(' \u00b7 ')}>
        <div class=${`options options-${Math.min(more.length, IN_SIGHT)}`}>${more.map(cardOf)}</div>
      <//>`}
      <${Stopped} options=${own.filter((option) => stopsOf(option).length > 0)} pathOf=${pathOf} />
    </section>`;
  });
}
