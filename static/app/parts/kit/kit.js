/** What is needed, counted by the engine: pieces under their headings, with the spare ones and how they were counted. */
import { html } from '../../vendor/preact.js';
import { Provenance } from '../provenance/provenance.js';

/** @typedef {{article: string, words: string, group: string, used: number, spare: number, total: number, why: string, provenance: {mark: string, source: string}}} KitLine */

/** @param {{lines: KitLine[], spareWords: string}} props */
export function Kit({ lines, spareWords }) {
  if (lines.length === 0) return html`<p class="soft">Nothing is counted yet: the kit comes from the plans on the list.</p>`;
  const groups = [...new Set(lines.map(({ group }) => group))];
  return html`<div class="kit stack">
    ${groups.map(
      (group) => html`<section key=${group} aria-label=${group}>
        <h3 class="kit-group">${group}</h3>
        <ul class="kit-lines">
          ${lines
            .filter((line) => line.group === group)
            .map(
              (line) => html`<li class="kit-line" key=${line.article}>
                <p class="kit-words">${line.words}<br /><span class="small soft">${line.why}</span></p>
                <p class="kit-count"><strong>${line.total}</strong>${line.spare > 0 && html`<br /><span class="small soft">${line.used} and ${line.spare} spare</span>`}</p>
              </li>`,
            )}
        </ul>
      </section>`,
    )}
    <p class="small">${spareWords}</p>
    <${Provenance} of=${lines[0].provenance} />
  </div>`;
}
