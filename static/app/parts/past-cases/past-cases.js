/** What table and own effect would have said of each past case, the own one learned from all the others (leave one out). */
import { html } from '../../vendor/preact.js';
import { prismWords } from '../../words/figures.js';
import { shortDateWords } from '../calendar/date.js';
import { Fold } from '../fold/fold.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @param {{past: {told: {id: string, achieved_pd: number, table_pd: number, own_pd: number}[], table_missed_pd: number | null, own_missed_pd: number | null}, operations: Map<string, LedgerRecord>}} props `operations`: the record behind each id; a case from a notebook has none */
export function PastCases({ past, operations }) {
  if (past.told.length === 0 || past.table_missed_pd === null || past.own_missed_pd === null) return null;
  const missed = `table missed by ${prismWords(past.table_missed_pd)}, own effect by ${prismWords(past.own_missed_pd)}`;
  return html`<${Fold} title="On your past cases" holds=${missed}>
    <div class="past-cases" role="region" tabindex="0" aria-label="Past cases, each told by the others">
      <table class="past-cases-table">
        <caption class="small soft">Correction in prism dioptres. What the table promised, what the effect of all your other cases makes of that, and what was achieved.</caption>
        <thead>
          <tr><th scope="col">Operated</th><th scope="col">Table</th><th scope="col">Own</th><th scope="col">Achieved</th></tr>
        </thead>
        <tbody>
          ${past.told.map(
            ({ id, achieved_pd, table_pd, own_pd }) => html`<tr key=${id}>
              <th scope="row"><${Case} operation=${operations.get(id)} /></th>
              <td>${prismWords(table_pd)}</td>
              <td>${prismWords(own_pd)}</td>
              <td><strong>${achieved_pd < 0 ? '\u2212' : ''}${prismWords(achieved_pd)}</strong></td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
  <//>`;
}

/** @param {{operation: LedgerRecord | undefined}} props */
function Case({ operation }) {
  if (!operation) return 'notebook';
  return html`<a href=${`#/patients/${operation.patient}`}>${shortDateWords(operation.body.operated_on)}</a>`;
}
