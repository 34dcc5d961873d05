/** A hundred small figures, told apart by their shape; the legend counts them in words. */
import { Picture } from '../../parts/picture/picture.js';
import { html } from '../../vendor/preact.js';

/** @typedef {import('../../words/speaker.js').Speaker} Speaker */

/** @param {{array: any, speaker: Speaker}} props an `IconArray` of the engine */
export function IconArray({ array, speaker }) {
  const counted = array.groups.filter((/** @type {any} */ group) => group.count > 0);
  const spoken = counted.map((/** @type {any} */ group) => groupWords(speaker, group)).join('; ');
  return html`<figure class="counsel-array">
    <${Picture} picture=${{ ...array, spoken }} />
    <ul class="counsel-legend">
      ${counted.map(
        (/** @type {any} */ group) => html`<li key=${group.figure}>
          <span class="counsel-sample" aria-hidden="true"><${Picture} picture=${{ marks: group.sample, width_mm: 6, height_mm: 8, spoken: '' }} /></span>
          <span>${groupWords(speaker, group)}</span>
        </li>`,
      )}
    </ul>
  </figure>`;
}

/** "74 of 100: straight or nearly straight". @param {Speaker} speaker @param {any} group */
function groupWords({ say, said }, { count, words }) {
  return say('{count} of 100: {words}', { count, words: said(words) });
}
