/** Options that a stop forbids: there, folded, each with its reason. */
import { Fold } from '../../parts/fold/fold.js';
import { Notices } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';
import { stopsOf } from '../../planning/levels.js';

/** @param {{options: any[], pathOf: (id: string) => string}} props */
export function Stopped({ options, pathOf }) {
  if (options.length === 0) return null;
  return html`<${Fold} title=${`Stopped: ${options.length}`} holds=${options.map(({ title }) => title).join(' · ')}>
    <div class="stack">
      ${options.map(
        (option) => html`<article class="stopped stack tight" key=${option.id}>
          <h3>${option.title}</h3>
          <${Notices} notices=${stopsOf(option)} />
          ${option.doses.some((/** @type {any} */ dose) => dose.changed) &&
          html`<div class="buttons"><a class="button" href=${`#${pathOf(option.id)}`}>Look at your figures</a></div>`}
        </article>`,
      )}
    </div>
  <//>`;
}
