/** Which of the planned visits it is: proposed by its day, and changed at a touch. */
import { Choice } from '../../parts/choice/choice.js';
import { dateWords } from '../../parts/calendar/date.js';
import { Field } from '../../parts/field/field.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';

/** How many planned visits after the proposed one are offered. */
const BEYOND = 1;

/** @param {{visiting: import('./visiting.js').Visiting, draft: import('./use-visit.js').VisitDraft | null, onTell: (fields: Partial<import('./visiting.js').Visiting>) => void}} props */
export function WhichVisit({ visiting, draft, onTell }) {
  if (!draft) return null;
  const chosen = visiting.planned ?? draft.proposed ?? '';
  const open = draft.planned.filter(({ is_kept: isKept }) => !isKept);
  const begun = open.filter(({ visit }) => visit.first_day <= draft.days_after || visit.name === draft.proposed).length;
  const offered = open.slice(0, begun + BEYOND).map(({ visit }) => visit.name);
  const names = chosen && !offered.includes(chosen) ? [...offered, chosen] : offered;
  return html`<section class="stack tight" aria-label="Which visit">
    <p><strong>Day ${draft.days_after} after the operation</strong>, ${dateWords(visiting.seen_on)}</p>
    <${Choice}
      legend="Which visit is it?"
      name="planned"
      options=${[...names.map((value) => ({ value, words: value, hint: value === draft.proposed ? 'by its day' : undefined })), { value: '', words: 'another visit' }]}
      value=${chosen}
      onChange=${(/** @type {string} */ planned) => onTell({ planned })}
    />
    ${chosen === '' && html`<${Field} label="What it is called" name="named" value=${visiting.named} input=${{ maxlength: 40 }} onInput=${(/** @type {string} */ named) => onTell({ named })} />`}
    <${Provenance} of=${draft.statements[0].provenance} />
  </section>`;
}
