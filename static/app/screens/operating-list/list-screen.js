/** The list in operating order, with its kit; who may write it puts it in order here and saves the whole. */
import { useObservable } from '../../observable.js';
import { dateWords } from '../../parts/calendar/date.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { Kit } from '../../parts/kit/kit.js';
import { Notices } from '../../parts/notice/notice.js';
import { PagePdf } from '../../parts/page-pdf/page-pdf.js';
import { useAnswer } from '../../planning/use-answer.js';
import { useRights } from '../../planning/use-rights.js';
import { listQuestion, moved, named } from '../../preparing/lists.js';
import { practiceOf } from '../../preparing/practice.js';
import { go } from '../../shell/router.js';
import { records } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { Conflict } from '../patient/conflict.js';
import { TheatreDim } from '../set-up/theatre-dim.js';
import { AddPlan } from './add-plan.js';
import { DayForm } from './day-form.js';
import { ListRow } from './list-row.js';
import { useList } from './use-list.js';

/** @param {{name: string, versions: import('../../store/envelope.js').LedgerRecord[], blank: import('../../preparing/lists.js').OperatingList}} props */
export function ListScreen({ name, versions, blank }) {
  const all = useObservable(records);
  const { current: practice } = practiceOf(all);
  const rights = useRights();
  const mayEdit = rights.write('operating_list');
  const { list, set, undo, save, isChanged, isNew, problem } = useList(name, versions, blank);
  // The engine refuses a list without a team; until one is named it is worked out all the same.
  const question = listQuestion(all, { ...list, team: list.team.trim() || 'Team', place: list.place.trim() }, practice);
  const { answer, faults, isFresh } = useAnswer('day_list', question);
  const day = /** @type {any} */ (answer);
  const [open, setOpen] = useState(/** @type {'pdf' | 'add' | null} */ (null));
  const [said, setSaid] = useState('');

  const entries = list.entries;
  /** @param {number} index @param {-1 | 1} by */
  const move = (index, by) => {
    set({ entries: moved(entries, index, by) });
    setSaid(`Now at place ${index + by + 1} of ${entries.length}.`);
  };
  /** @param {number} index @param {object} fields */
  const change = (index, fields) => set({ entries: entries.map((entry, place) => (place === index ? { ...entry, ...fields } : entry)) });
  /** @param {number} index */
  const remove = (index) => set({ entries: entries.filter((_, place) => place !== index) });

  const blocked = list.team.trim() === '' ? 'Name the team first.' : undefined;
  const keep = async () => {
    const id = await save();
    if (id && isNew) go(`/lists/${id}`, { replace: true });
  };
  const drawing = isFresh && day ? undefined : 'The list is not worked out yet.';
  const pdf = { label: 'PDF and print', act: () => setOpen('pdf'), blocked: drawing };
  const saving = { label: 'Save the list', act: keep, blocked };
  const isEditing = mayEdit && isChanged;

  return html`<${Frame}
    title=${isNew ? 'New list' : `List: ${dateWords(list.on)}`}
    back="/lists"
    layout="wide"
    next=${isEditing ? saving : pdf}
    also=${isEditing && !isNew ? { label: 'Undo changes', act: undo } : undefined}
  >
    ${rights.role === 'theatre' && html`<${TheatreDim} />`}
    <div class="day-list theatre stack wide">
      ${versions.length > 1 && html`<${Conflict} kind="operating_list" versions=${versions} told=${(/** @type {any} */ body) => named(all, body)} />`}
      ${problem && html`<p class="field-fault" role="alert">${problem}</p>`}
      ${mayEdit ? html`<${DayForm} list=${list} set=${set} open=${isNew} />` : html`<p class="day-list-team">${[list.team, list.place].filter(Boolean).join(', ')}</p>`}
      ${day ? html`<${FaultList} faults=${faults} title="This list cannot be worked out." />` : html`<${EngineWait} faults=${faults} title="This list cannot be worked out." />`}
      ${day &&
      html`<p>${day.rows.length} operation${day.rows.length === 1 ? '' : 's'}, <strong>${day.starts_at}</strong> to <strong>${day.ends_at}</strong>, ${day.turnover_min} minutes between two.</p>`}
      <ol class="day-rows">
        ${entries.map(
          (entry, index) =>
            html`<${ListRow}
              key=${keyOf(entries, index)}
              name=${keyOf(entries, index)}
              row=${rowOf(day, isFresh, entries, index)}
              entry=${entry}
              index=${index}
              count=${entries.length}
              on=${list.on}
              edit=${mayEdit && { move, change, remove }}
            />`,
        )}
      </ol>
      <p class="unseen" role="status">${said}</p>
      ${mayEdit && html`<div class="buttons"><button type="button" class="button" aria-haspopup="dialog" onClick=${() => setOpen('add')}>Add an operation</button></div>`}
      ${day && html`<section class="stack" aria-labelledby="kit-heading"><h2 id="kit-heading">Kit</h2><${Notices} notices=${day.kit_notices} /><${Kit} lines=${day.kit} spareWords=${day.spare_words} /></section>`}
      ${day &&
      html`<footer class="small stack tight">
        ${day.practice_words && html`<p>This clinic's practice: ${day.practice_words}</p>`}
        <p>Engine ${day.engine_version}. ${day.disclaimer}</p>
      </footer>`}
    </div>
    ${open === 'add' && html`<${AddPlan} onList=${entries.map(({ plan_id }) => plan_id)} onAdd=${(/** @type {any} */ entry) => set({ entries: [...entries, entry] })} onClose=${() => setOpen(null)} />`}
    ${open === 'pdf' && !drawing && html`<${PagePdf} ask="day_list_pdf" payload=${question} title="List as PDF" name=${`list-${list.on}`} onClose=${() => setOpen(null)} />`}
  <//>`;
}

/**
 * The row of an entry: while a new order is being worked out, nothing is shown beside another patient's name.
 *
 * @param {any} day
 * @param {boolean} isFresh
 * @param {import('../../preparing/lists.js').Entry[]} entries
 * @param {number} index
 */
const rowOf = (day, isFresh, entries, index) => (isFresh && day.rows.length === entries.length ? day.rows[index] : null);

/**
 * Stays with its entry through every order; the same plan twice is told apart by its turn.
 *
 * @param {import('../../preparing/lists.js').Entry[]} entries
 * @param {number} index
 */
const keyOf = (entries, index) => `${entries[index].plan_id}-${entries.slice(0, index).filter(({ plan_id }) => plan_id === entries[index].plan_id).length}`;
