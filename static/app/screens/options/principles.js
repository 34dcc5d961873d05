/** What holds instead of a standard dose in palsy and restriction: read before any option. */
import { Notice } from '../../parts/notice/notice.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';

/** @param {{principles: any[]}} props `Principle`s of the engine */
export function Principles({ principles }) {
  if (principles.length === 0) return null;
  return html`<section class="principles stack tight" aria-label="Principles">
    <h2 class="options-heading">First</h2>
    ${principles.map(
      (principle) => html`<${Notice} key=${principle.code} level=${principle.level} provenance=${principle.provenance}>
        <p class="principle-topic">${principle.topic}</p>
        <p>${principle.text}</p>
        ${principle.figures.length > 0 &&
        html`<ul class="principle-figures">
          ${principle.figures.map((/** @type {any} */ figure) => html`<li key=${figure.text}>${figure.text} <${Provenance} of=${figure.provenance} /></li>`)}
        </ul>`}
      <//>`,
    )}
  </section>`;
}
