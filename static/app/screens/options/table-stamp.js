/** The name, mark and source of the table that a dose came from. */
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';

/** @param {{table: {name: string, provenance: {mark: string, source: string}}}} props */
export function TableStamp({ table }) {
  return html`<div class="table-stamp">
    <p class="small">Table <strong>${table.name}</strong></p>
    <${Provenance} of=${table.provenance} />
  </div>`;
}
