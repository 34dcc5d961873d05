/** Which plan comes next on the list: signed ones first, found by name, number or birth date. */
import { shortDateWords } from '../../parts/calendar/date.js';
import { Empty } from '../../parts/empty/empty.js';
import { Sheet } from '../../parts/sheet/sheet.js';
import { candidates } from '../../preparing/lists.js';
import { records } from '../../store/store.js';
import { html, useMemo, useState } from '../../vendor/preact.js';
import { matches } from '../patients/match.js';

const USUAL_MIN = 45;
const SHOWN = 30;

/** @param {{onList: string[], onAdd: (entry: import('../../preparing/lists.js').Entry) => void, onClose: () => void}} props `onList`: ids of plans */
export function AddPlan({ onList, onAdd, onClose }) {
  const [typed, setTyped] = useState('');
  const all = useMemo(() => candidates(records.get()), []);
  const found = all.filter(({ plan, patient }) => !onList.includes(plan.id) && matches(patient.body, typed));

  /** @param {(typeof all)[number]} candidate */
  const add = ({ plan }) => {
    onAdd({ patient_id: plan.patient, plan_id: plan.id, duration_min: USUAL_MIN, note: '' });
    onClose();
  };

  return html`<${Sheet} open=${true} title="Add an operation" onClose=${onClose}>
    <div class="stack">
      <label class="field"><span class="field-label">Name, number or birth date</span><input class="input" type="search" autocomplete="off" value=${typed} onInput=${(/** @type {any} */ event) => setTyped(event.currentTarget.value)} /></label>
      ${found.length === 0 && html`<${Empty} title="No plan fits"><p>Plans that are on the list already are not shown.</p><//>`}
      <ul class="add-plans">
        ${found.slice(0, SHOWN).map(
          (candidate) => html`<li key=${candidate.plan.id}>
            <button type="button" class="add-plan" onClick=${() => add(candidate)}>
              <strong>${candidate.patient.body.full_name}</strong>
              <span>${shortDateWords(candidate.patient.body.born_on)}, ${candidate.patient.body.hospital_number}</span>
              <span>${candidate.plan.body.option.title}</span>
              <span class=${candidate.signature ? 'soft' : 'add-unsigned'}>${candidate.signature ? `Signed, check word ${candidate.signature.body.check_word}` : 'Planned, not signed'}</span>
            </button>
          </li>`,
        )}
      </ul>
    </div>
  <//>`;
}
