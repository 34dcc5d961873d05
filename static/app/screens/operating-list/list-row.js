/** One operation of the list: when, who, which eye and what; what is wrong with it; and its place, to be changed by touch or key. */
import { ageWords } from '../../parts/calendar/age.js';
import { momentWords } from '../../parts/calendar/ago.js';
import { shortDateWords } from '../../parts/calendar/date.js';
import { Notices } from '../../parts/notice/notice.js';
import { signatureOf } from '../../planning/standing.js';
import { find } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html, useEffect, useState } from '../../vendor/preact.js';

/** @typedef {{move: (index: number, by: -1 | 1) => void, change: (index: number, fields: object) => void, remove: (index: number) => void}} Edit */

const SHORTEST_MIN = 5;
const LONGEST_MIN = 600;

/** @param {{name: string, row: any | null, entry: import('../../preparing/lists.js').Entry, index: number, count: number, on: string, edit: Edit | false}} props `row` of the engine's list */
export function ListRow({ name, row, entry, index, count, on, edit }) {
  const plan = find(records.get(), entry.plan_id);
  const signature = plan && signatureOf(records.get(), plan);
  const label = row?.full_name || `Operation ${index + 1}`;
  return html`<li class="day-row card" aria-label=${label}>
    <div class="day-when">
      <strong class="day-start">${row?.starts_at ?? ''}</strong>
      <span>${row ? `to ${row.ends_at}` : ''}</span>
      <span>${entry.duration_min} min</span>
    </div>
    <div class="day-who stack tight">
      ${row && html`<${Who} row=${row} on=${on} />`}
      ${row && html`<${Notices} notices=${row.notices} />`}
      ${entry.note && !edit && html`<p><span class="soft">Note: </span>${entry.note}</p>`}
      <div class="buttons">
        ${signature && html`<a class="button" href=${`#/patients/${plan.patient}/card/${signature.id}`}>Card</a>`}
        ${plan && html`<a class="button" href=${`#/patients/${plan.patient}/set-up/${plan.id}`}>Set-up</a>`}
      </div>
      ${edit && html`<${Place} name=${name} label=${label} entry=${entry} index=${index} count=${count} edit=${edit} />`}
    </div>
  </li>`;
}

/** @param {{row: any, on: string}} props */
function Who({ row, on }) {
  if (!row.full_name) return null;
  return html`<p class="day-name">${row.full_name}</p>
    <p>
      ${shortDateWords(row.born_on)} (${ageWords(row.born_on, on)}), <strong>${row.hospital_number}</strong>, check word <strong class="check-word">${row.check_word}</strong>
    </p>
    <p class="day-eyes">${row.eyes_words}</p>
    <ul class="day-operation">${row.operation.map((/** @type {string} */ words) => html`<li key=${words}>${words}</li>`)}</ul>
    <p>${[row.anaesthesia_words, row.magnification_words, row.adjusting_words].filter(Boolean).join('. ')}.</p>
    ${row.adjust_from && html`<p>Adjust from <strong>${momentWords(row.adjust_from)}</strong></p>`}
    <p>Allergies: <strong>${row.allergies || 'not recorded: ask'}</strong></p>`;
}

/** @param {{name: string, label: string, entry: import('../../preparing/lists.js').Entry, index: number, count: number, edit: Edit}} props */
function Place({ name, label, entry, index, count, edit }) {
  const [touched, setTouched] = useState('');
  const [minutes, setMinutes] = useState(String(entry.duration_min));

  // A row that moves takes its buttons along; the one that was pressed keeps the focus, or its neighbour at the end.
  useEffect(() => {
    if (!touched) return;
    const [pressed, other] = ['earlier', 'later'].sort((one) => (one === touched ? -1 : 1)).map((way) => document.getElementById(`${way}-${name}`));
    (pressed?.getAttribute('aria-disabled') === 'true' ? other : pressed)?.focus();
  }, [index]);

  const step = (/** @type {'earlier' | 'later'} */ way, /** @type {-1 | 1} */ by, /** @type {boolean} */ isEnd) =>
    html`<button
      type="button"
      class="button day-move"
      id=${`${way}-${name}`}
      aria-disabled=${isEnd ? 'true' : undefined}
      aria-label=${`${label}: ${way}`}
      onClick=${() => {
        if (isEnd) return;
        setTouched(way);
        edit.move(index, by);
      }}
    >
      <span aria-hidden="true">${by < 0 ? '▲' : '▼'}</span> ${way === 'earlier' ? 'Earlier' : 'Later'}
    </button>`;

  const typeMinutes = (/** @type {string} */ typed) => {
    setMinutes(typed);
    const said = Number(typed);
    if (Number.isInteger(said) && said >= SHORTEST_MIN && said <= LONGEST_MIN) edit.change(index, { duration_min: said });
  };
  const isKept = Number(minutes) === entry.duration_min;

  return html`<div class="day-edit">
    <div class="buttons">${step('earlier', -1, index === 0)}${step('later', 1, index === count - 1)}</div>
    <label class="day-minutes"><span class="small">Minutes</span><input class="input" inputmode="numeric" value=${minutes} aria-invalid=${isKept ? undefined : 'true'} onInput=${(/** @type {any} */ event) => typeMinutes(event.currentTarget.value)} /></label>
    <label class="day-note"><span class="small">Note</span><input class="input" value=${entry.note} maxlength="200" onChange=${(/** @type {any} */ event) => edit.change(index, { note: event.currentTarget.value.trim() })} /></label>
    <button type="button" class="button bare" aria-label=${`${label}: take off the list`} onClick=${() => edit.remove(index)}>Take off</button>
    ${!isKept && html`<p class="field-fault" role="alert"><strong>${minutes || 'Nothing'} is no duration.</strong> Allowed: ${SHORTEST_MIN} to ${LONGEST_MIN} minutes. ${entry.duration_min} is kept.</p>`}
  </div>`;
}
