/** The two entries in one table: their details, and how much was recorded under each. Where they differ a word says so. */
import { ageWords } from '../../parts/calendar/age.js';
import { momentWords } from '../../parts/calendar/ago.js';
import { shortDateWords, today } from '../../parts/calendar/date.js';
import { find, heads } from '../../store/heads.js';
import { html } from '../../vendor/preact.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @param {string} answer */
const asked = (answer) => (answer === 'unknown' ? 'not asked' : answer);

const FIELDS = [
  { field: 'full_name', words: 'Name' },
  { field: 'born_on', words: 'Born', told: (/** @type {string} */ day) => `${shortDateWords(day)} (${ageWords(day, today())})` },
  { field: 'hospital_number', words: 'Number' },
  { field: 'sex', words: 'Sex', lacking: 'unknown' },
  { field: 'allergies', words: 'Allergies', lacking: 'none entered' },
  { field: 'latex', words: 'Latex not borne', lacking: 'not asked', told: asked },
  { field: 'anticoagulants', words: 'Anticoagulants', lacking: 'none entered' },
  { field: 'malignant_hyperthermia_family', words: 'Malignant hyperthermia in the family', lacking: 'not asked', told: asked },
  { field: 'note', words: 'Note', lacking: 'none' },
];
const KINDS = { examination: 'Examined', plan: 'Planned', signature: 'Signed', operation: 'Operated' };

/** @param {{sides: LedgerRecord[], records: readonly LedgerRecord[]}} props */
export function SideBySide({ sides, records }) {
  const entered = sides.map(({ patient }) => find(records, patient));
  return html`<table class="two-entries">
    <thead><tr><td></td><th scope="col">One entry</th><th scope="col">The other</th></tr></thead>
    <tbody>
      ${FIELDS.map(({ field, words, told = String, lacking = 'not entered' }) => {
        const values = sides.map(({ body }) => (body[field] ? told(body[field]) : lacking));
        return html`<tr key=${field}>
          <th scope="row">${words}${values[0] !== values[1] && html`<span class="differs">differs</span>`}</th>
          ${values.map((value) => html`<td class="as-typed"><strong>${value}</strong></td>`)}
        </tr>`;
      })}
      ${Object.entries(KINDS).map(
        ([kind, words]) => html`<tr key=${kind}><th scope="row">${words}</th>${sides.map(({ patient }) => html`<td>${heads(records, kind, patient).length}</td>`)}</tr>`,
      )}
      <tr><th scope="row">Entered</th>${entered.map((first) => html`<td>${first ? `${momentWords(first.recorded_at)}, by ${first.author}` : 'not known'}</td>`)}</tr>
    </tbody>
  </table>`;
}
