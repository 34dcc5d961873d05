/** What can be done: all options to compare, or one of them to change and choose. */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { usePlanning } from '../../planning/use-planning.js';
import { find, heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { OneOption } from './one-option.js';
import { AllOptions } from './all-options.js';

/** @param {{patient: string, examination: string, option?: string}} props ids */
export default function Options({ patient: id, examination: examinationId, option }) {
  const all = useObservable(records);
  const [patient] = heads(all, 'patient', id);
  const examination = find(all, examinationId);
  if (!patient || !examination) {
    return html`<${Absent} what="This examination" patient=${patient?.body} step=${{ label: 'To the case', to: patient ? `/patients/${id}` : '/patients' }} />`;
  }
  return html`<${Weighing} key=${`${examinationId} ${option ?? ''}`} patient=${patient} examination=${examination} option=${option} />`;
}

/** @param {{patient: import('../../store/envelope.js').LedgerRecord, examination: import('../../store/envelope.js').LedgerRecord, option?: string}} props */
function Weighing({ patient, examination, option }) {
  const weighed = usePlanning(patient, examination, option);
  return option
    ? html`<${OneOption} patient=${patient} examination=${examination} weighed=${weighed} optionId=${option} />`
    : html`<${AllOptions} patient=${patient} examination=${examination} weighed=${weighed} />`;
}
