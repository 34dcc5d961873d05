/** Figures of the engine as a table; it scrolls by itself where the phone is narrow. */
import { html } from '../../vendor/preact.js';

/** @typedef {{title: string, columns: string[], rows: string[][]}} Figures */

/** @param {{figures: Figures}} props */
export function FigureTable({ figures: { title, columns, rows } }) {
  return html`<div class="results-table" role="region" aria-label=${`Figures: ${title}`} tabindex="0">
    <table>
      <thead><tr>${columns.map((column) => html`<th key=${column} scope="col">${column}</th>`)}</tr></thead>
      <tbody>
        ${rows.map(
          ([first, ...others]) => html`<tr key=${first}>
            <th scope="row">${first}</th>
            ${others.map((cell, place) => html`<td key=${columns[place + 1]}>${cell}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
