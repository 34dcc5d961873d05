/** A new patient, or a correction of one's details. What is typed survives leaving the screen and the end of the app. */
import { engineState } from '../../engine/engine.js';
import { useObservable } from '../../observable.js';
import { today } from '../../parts/calendar/date.js';
import { Choice } from '../../parts/choice/choice.js';
import { DateDigits } from '../../parts/date-digits/date-digits.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Field } from '../../parts/field/field.js';
import { Frame } from '../../parts/frame/frame.js';
import { useRights } from '../../planning/use-rights.js';
import { go } from '../../shell/router.js';
import { heads } from '../../store/heads.js';
import { drafts, records, saveRecord } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { worklist } from '../patients/worklist.js';
import { checkBody } from './check.js';
import { bodyFrom, missing, same, typedFrom } from './form.js';
import { Likenesses } from './likenesses.js';
import { likenesses } from './likeness.js';
import { Restored } from './restored.js';

const KNOWN = [
  { value: 'yes', words: 'yes' },
  { value: 'no', words: 'no' },
  { value: 'unknown', words: 'not asked' },
];
const SEXES = ['female', 'male', 'other', 'unknown'].map((value) => ({ value, words: value }));

/** @param {{patient?: string}} props the id of the patient whose details are corrected; absent for a new one */
export default function PatientEdit({ patient: id }) {
  const all = useObservable(records);
  const rights = useRights();
  const versions = id ? heads(all, 'patient', id) : [];
  const saved = typedFrom(versions[0]?.body);
  const draft = `patient/${id ?? 'new'}`;
  const [typed, setTyped] = useState(() => typedFrom(drafts.get(draft) ?? saved));
  const [restored, setRestored] = useState(() => drafts.get(draft) !== undefined);
  const [faults, setFaults] = useState(/** @type {import('../../parts/fault-list/fault-list.js').FaultFacts[]} */ ([]));
  const [saving, setSaving] = useState(false);

  const type = (field, value) => {
    const now = { ...typed, [field]: value };
    setTyped(now);
    setFaults(faults.filter((fault) => fault.field !== field));
    if (same(now, saved)) drafts.drop(draft);
    else drafts.keep(draft, now);
  };

  const startOver = () => {
    drafts.drop(draft);
    setTyped(saved);
    setRestored(false);
    setFaults([]);
  };

  const save = async (event) => {
    event.preventDefault();
    if (saving) return;
    const plainly = missing(typed, today());
    if (plainly.length > 0) return setFaults(plainly);
    setSaving(true);
    const body = bodyFrom(typed);
    const found = await checkBody('patient', body);
    if (found.faults.length > 0) {
      setSaving(false);
      return setFaults(found.faults);
    }
    try {
      const record = await saveRecord('patient', { patient: id, supersedes: versions.map((version) => version.id), body, draft });
      go(`/patients/${record.patient}`, { replace: true });
    } catch (problem) {
      setSaving(false);
      setFaults([{ code: problem.code ?? 'not_saved', text: problem.text ?? 'This phone could not save it.', field: '', value: '', allowed: '' }]);
    }
  };

  const blocked = rights.write('patient') ? undefined : `Patients are entered by surgeons, clinic staff and coordinators; your role here is ${rights.role ?? 'not known'}.`;
  const faultOf = (field) => faults.find((fault) => fault.field === field);
  const entry = (field) => ({ name: field, value: typed[field], onInput: (value) => type(field, value), fault: faultOf(field) });
  const others = worklist(all).filter((entry) => entry.id !== id);

  return html`<${Frame}
    title=${id ? 'Correct details' : 'New patient'}
    patient=${versions[0]?.body}
    back=${id ? `/patients/${id}` : '/patients'}
    next=${{ label: saving ? savingWords(engineState.get().phase) : 'Save', form: 'patient-form', blocked }}
  >
    <form id="patient-form" class="stack form" onSubmit=${save} novalidate>
      ${restored && html`<${Restored} onStartOver=${startOver} />`}
      <${FaultList} faults=${faults} />
      <${Field} label="Full name" ...${entry('full_name')} input=${{ autocapitalize: 'words', spellcheck: false }} />
      <${DateDigits} key=${restored ? 'restored' : 'fresh'} legend="Birth date" ...${entry('born_on')} />
      <div class="stack tight">
        <${Field} label="Hospital number" ...${entry('hospital_number')} input=${{ autocapitalize: 'characters', spellcheck: false }} />
        <${Likenesses} found=${likenesses(typed, others)} />
      </div>
      <${Choice} legend="Sex" name="sex" options=${SEXES} value=${typed.sex} onChange=${(value) => type('sex', value)} />
      <${Field} label="Allergies" optional ...${entry('allergies')} hint="Shown on the card" />
      <${Choice} legend="Latex not borne" name="latex" options=${KNOWN} value=${typed.latex} onChange=${(value) => type('latex', value)} />
      <${Field} label="Anticoagulants" optional ...${entry('anticoagulants')} hint="What is taken against clotting, or: none. Shown on the card" />
      <${Choice}
        legend="Malignant hyperthermia in the family"
        name="malignant-hyperthermia"
        options=${KNOWN}
        value=${typed.malignant_hyperthermia_family}
        onChange=${(value) => type('malignant_hyperthermia_family', value)}
      />
      <${Field} label="Note" optional ...${entry('note')} rows=${3} />
    </form>
  <//>`;
}

/** @param {'starting' | 'ready' | 'failed'} phase of the engine */
function savingWords(phase) {
  return phase === 'starting' ? 'Saving; the engine is still starting' : 'Saving';
}
