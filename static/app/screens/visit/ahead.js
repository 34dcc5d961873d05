/** The visits after this one: as they are planned, or planned anew with a reason: moved, added, dropped. */
import { shortDateWords } from '../../parts/calendar/date.js';
import { DayField } from '../../parts/day-field/day-field.js';
import { Field } from '../../parts/field/field.js';
import { Fold } from '../../parts/fold/fold.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';
import { dayAfter } from './visiting.js';

/** @typedef {import('./visiting.js').Ahead} Planned */

/**
 * @param {object} props
 * @param {import('./visiting.js').Visiting} props.visiting
 * @param {import('./use-visit.js').VisitDraft | null} props.draft
 * @param {{field: string, text: string, allowed: string}[]} props.hindrances
 * @param {(fields: Partial<import('./visiting.js').Visiting>) => void} props.onTell
 */
export function Ahead({ visiting, draft, hindrances, onTell }) {
  if (!draft) return null;
  const { ahead } = visiting;
  const usual = draft.ahead.map(({ visit, from_on, to_on }) => ({ name: visit.name, from_on, to_on }));
  const shown = ahead ?? usual;
  const [first] = shown;
  const holds = first ? `next ${first.name}, from ${shortDateWords(first.from_on)}${ahead ? ', planned anew' : ''}` : 'none';
  /** @param {Planned[]} next */
  const plan = (next) => onTell({ ahead: next });
  return html`<${Fold} title="Visits ahead" holds=${holds} open=${ahead !== null}>
    <div class="stack">
      ${ahead === null
        ? html`<ul>${shown.map((each) => html`<li key=${each.name}>${each.name}: ${shortDateWords(each.from_on)} to ${shortDateWords(each.to_on)}</li>`)}</ul>
            <${Provenance} of=${draft.statements[1].provenance} />
            <button type="button" class="button" onClick=${() => plan(usual)}>Plan them anew</button>`
        : html`${ahead.map(
              (each, index) => html`<${Row}
                key=${index}
                number=${index}
                each=${each}
                fault=${hindrances.find(({ field }) => field.startsWith(`ahead.${index}.`))}
                onChange=${(/** @type {Partial<Planned>} */ fields) => plan(ahead.with(index, { ...each, ...fields }))}
                onDrop=${() => plan(ahead.toSpliced(index, 1))}
              />`,
            )}
            <div class="buttons">
              <button type="button" class="button" onClick=${() => plan([...ahead, { name: '', from_on: dayAfter(visiting.seen_on, 7), to_on: dayAfter(visiting.seen_on, 14) }])}>Add a visit</button>
              <button type="button" class="button bare" onClick=${() => onTell({ ahead: null, ahead_reason: '' })}>Leave them as they were</button>
            </div>
            <${Field} label="Why they are planned anew" name="ahead_reason" rows=${2} value=${visiting.ahead_reason} input=${{ maxlength: 400 }} onInput=${(/** @type {string} */ ahead_reason) => onTell({ ahead_reason })} />`}
    </div>
  <//>`;
}

/** @param {{number: number, each: Planned, fault?: {text: string, allowed: string}, onChange: (fields: Partial<Planned>) => void, onDrop: () => void}} props */
function Row({ number, each, fault, onChange, onDrop }) {
  return html`<section class="visit-ahead card stack tight" aria-label=${each.name || `Visit ${number + 1} ahead`}>
    <${Field} label="Visit" name=${`ahead-${number}`} value=${each.name} input=${{ maxlength: 40 }} onInput=${(/** @type {string} */ name) => onChange({ name })} />
    <div class="visit-days">
      <${DayField} label="From" name=${`ahead-from-${number}`} value=${each.from_on} onInput=${(/** @type {string} */ from_on) => onChange({ from_on })} />
      <${DayField} label="Until" name=${`ahead-until-${number}`} value=${each.to_on} fault=${fault} onInput=${(/** @type {string} */ to_on) => onChange({ to_on })} />
    </div>
    <button type="button" class="button bare" onClick=${onDrop}>Drop this visit</button>
  </section>`;
}
