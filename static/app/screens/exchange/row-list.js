/** What cannot be taken, place by place: what stands there, and what would be allowed. */
import { html } from '../../vendor/preact.js';

/** @typedef {{place: string, text: string, value?: string, allowed?: string}} Told */

/** @param {{rows: Told[]}} props */
export function RowList({ rows }) {
  return html`<ol class="exchange-rows">
    ${rows.map(
      ({ place, text, value, allowed }, at) => html`<li class="card exchange-row" key=${`${place} ${at}`}>
        <strong class="exchange-name">${place}</strong>
        <p>${text}</p>
        ${(value || allowed) && html`<p class="small soft">${value && html`Given: ${value}. `}${allowed && html`Allowed: ${allowed}.`}</p>`}
      </li>`,
    )}
  </ol>`;
}
