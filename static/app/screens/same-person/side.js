/** One entry: its details, and how much was recorded under it. What differs from the other is marked in words. */
import { ageWords } from '../../parts/calendar/age.js';
import { shortDateWords, today } from '../../parts/calendar/date.js';
import { momentWords } from '../../parts/calendar/ago.js';
import { find, heads } from '../../store/heads.js';
import { html } from '../../vendor/preact.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

const FIELDS = [
  { field: 'full_name', words: 'Name' },
  { field: 'born_on', words: 'Born', told: (/** @type {string} */ day) => `${shortDateWords(day)} (${ageWords(day, today())})` },
  { field: 'hospital_number', words: 'Number' },
  { field: 'sex', words: 'Sex', lacking: 'unknown' },
  { field: 'allergies', words: 'Allergies', lacking: 'none entered' },
  { field: 'note', words: 'Note', lacking: 'none' },
];

/** @param {{patient: LedgerRecord, beside: any, records: readonly LedgerRecord[]}} props `beside`: the other entry's body */
export function Side({ patient: { patient: id, body }, beside, records }) {
  const first = find(records, id);
  const counts = ['examination', 'plan', 'signature'].map((kind) => heads(records, kind, id).length);
  return html`<section class="card stack" aria-label=${`Entry ${body.hospital_number}`}>
    <dl class="facts">
      ${FIELDS.map(({ field, words, told = String, lacking = 'not entered' }) => {
        const isSame = (body[field] ?? '') === (beside[field] ?? '');
        return html`<div class="fact" key=${field}>
          <dt>${words}</dt>
          <dd class="as-typed">${isSame ? '' : html`<span class="differs">differs: </span>`}<strong>${body[field] ? told(body[field]) : lacking}</strong></dd>
        </div>`;
      })}
    </dl>
    <p class="small soft">${counts[0]} examinations, ${counts[1]} plans, ${counts[2]} signed. ${first && `Entered by ${first.author}, ${momentWords(first.recorded_at)}.`}</p>
  </section>`;
}
