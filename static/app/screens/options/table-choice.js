/** Which dose table: its name, its mark and its source are always in sight, for the chosen one and the others. */
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';

/** @param {{tables: {id: string, name: string, caution: string, provenance: {mark: string, source: string}, clinics_own?: boolean}[], chosen: string | null, onChoose: (id: string) => void}} props */
export function TableChoice({ tables, chosen, onChoose }) {
  if (tables.length === 0) return null;
  return html`<fieldset class="tables">
    <legend class="tables-legend">Dose table</legend>
    <div class="tables-row">
      ${tables.map(
        (table) => html`<label class="table-option" key=${table.id}>
          <input class="table-input" type="radio" name="table" value=${table.id} checked=${table.id === chosen} onChange=${() => onChoose(table.id)} />
          <span class="table-face">
            <strong class="table-name">${table.name}</strong>
            ${table.clinics_own && html`<span class="small soft"> the clinic's own</span>`}
            <${Provenance} of=${table.provenance} />
            ${table.id === chosen && table.caution && html`<span class="table-caution">${table.caution}</span>`}
          </span>
        </label>`,
      )}
    </div>
  </fieldset>`;
}
