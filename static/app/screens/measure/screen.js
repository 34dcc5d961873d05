/**
 * Measuring: which place, what was read there, and what else was seen. One place at a time, the next one offers itself.
 * Every touch is kept as a draft; saving makes an `examination` record, or one that replaces the examination corrected.
 */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { Frame } from '../../parts/frame/frame.js';
import { mayWrite } from '../../planning/rights.js';
import { session } from '../../session/session.js';
import { go } from '../../shell/router.js';
import { find, heads, history } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html, useEffect } from '../../vendor/preact.js';
import { SittingScreen } from './sitting-screen.js';

/**
 * @param {{patient: string, examination?: string, operation?: string, visit?: string}} props ids; without an examination a new
 *   one begins; with an operation it is measured for a visit after it, and leads back there
 */
export default function Measure({ patient: id, examination: examinationId, operation, visit }) {
  const all = useObservable(records);
  const { clinic } = useObservable(session);
  const [patient] = heads(all, 'patient', id);
  const corrected = examinationId ? find(all, examinationId) : undefined;
  const newest = corrected && newestOf(all, corrected);
  const visitPlace = operation ? `/patients/${id}/visit/${operation}/${visit}` : undefined;

  useEffect(() => {
    if (newest && newest.id !== examinationId) go(`${visitPlace ?? `/patients/${id}`}/measure/${newest.id}`, { replace: true });
  }, [newest?.id, examinationId]);

  if (!patient) return html`<${Absent} what="This patient" step=${{ label: 'Show all patients', to: '/patients' }} />`;
  if (examinationId && !corrected) {
    return html`<${Absent} what="This examination" patient=${patient.body} step=${{ label: 'To the case', to: `/patients/${id}` }} />`;
  }
  if (!mayWrite(clinic?.role, 'examination')) {
    return html`<${Frame} title="Measure" patient=${patient.body} back=${`/patients/${id}`}>
      <p>Measurements are recorded by surgeons and clinic staff. Your role in this clinic is ${clinic?.role ?? 'not known'}.</p>
    <//>`;
  }
  return html`<${SittingScreen} key=${examinationId ?? 'new'} patient=${patient} corrected=${corrected} visitPlace=${visitPlace} />`;
}

/**
 * The current version of the same examination: correcting an older one would make two.
 * @param {readonly import('../../store/envelope.js').LedgerRecord[]} all
 * @param {import('../../store/envelope.js').LedgerRecord} record
 */
function newestOf(all, record) {
  const family = new Set(history(all, record.id).map(({ id }) => id));
  return heads(all, 'examination', record.patient).find(({ id }) => family.has(id)) ?? record;
}
