/** What the engine makes of the patient's operation records: the muscles as they were left. */
import { useObservable } from '../../observable.js';
import { earlierQuestion } from '../../planning/operations.js';
import { useAnswer } from '../../planning/use-answer.js';
import { records } from '../../store/store.js';
import { useMemo } from '../../vendor/preact.js';

/** @type {import('./rest/taking-over.js').Earlier[]} */
const NOTHING = [];

/** @param {string} patient id */
export function useEarlier(patient) {
  const all = useObservable(records);
  const question = useMemo(() => earlierQuestion(all, patient), [all, patient]);
  const { answer } = useAnswer('previous_operations', question);
  return /** @type {import('./rest/taking-over.js').Earlier[]} */ (answer) ?? NOTHING;
}
