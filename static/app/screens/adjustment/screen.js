/** The adjustment of a suture: the deviation before, what was moved, the deviation after. */
import { useObservable } from '../../observable.js';
import { Absent } from '../../parts/absent/absent.js';
import { useRights } from '../../planning/use-rights.js';
import { find, heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { AdjustmentScreen } from './adjustment-screen.js';

/** @param {{patient: string, operation: string}} props ids */
export default function AdjustmentRoute({ patient: id, operation: operationId }) {
  const all = useObservable(records);
  const rights = useRights();
  const [patient] = heads(all, 'patient', id);
  const operation = find(all, operationId);
  if (!patient || !operation || !rights.write('adjustment')) {
    return html`<${Absent} what="This adjustment" patient=${patient?.body} step=${{ label: 'To the case', to: patient ? `/patients/${id}` : '/patients' }} />`;
  }
  const before = heads(all, 'adjustment', id).filter(({ body }) => body.operation_id === operationId);
  return html`<${AdjustmentScreen} key=${operationId} patient=${patient} operation=${operation} replaced=${before} />`;
}
