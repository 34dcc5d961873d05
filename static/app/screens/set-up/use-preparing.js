/** What is being prepared for a plan: what was saved, with what was changed since kept as a draft, and saving it. */
import { useObservable } from '../../observable.js';
import { today } from '../../parts/calendar/date.js';
import { NOTHING_WISHED, setUpsOf } from '../../preparing/set-ups.js';
import { canonical } from '../../store/canonical.js';
import { drafts, records, saveRecord } from '../../store/store.js';
import { useState } from '../../vendor/preact.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('../../preparing/set-ups.js').Prepared} Prepared */

/**
 * @param {LedgerRecord} plan
 * @param {LedgerRecord | null} practice
 */
export function usePreparing(plan, practice) {
  const draftName = `set_up/${plan.id}`;
  const versions = setUpsOf(useObservable(records), plan);
  const [draft, setDraft] = useState(/** @type {() => Prepared | null} */ (() => drafts.get(draftName) ?? null));
  const [problem, setProblem] = useState('');
  const prepared = draft ?? preparedIn(versions[0]);
  const isChanged = !versions[0] || (draft !== null && canonical(draft) !== canonical(preparedIn(versions[0])));

  /** @param {Partial<Prepared>} fields */
  const set = (fields) => {
    const next = { ...prepared, ...fields };
    drafts.keep(draftName, next);
    setDraft(next);
  };

  const save = async () => {
    setProblem('');
    const body = { schema: 1, plan_id: plan.id, plan_digest: plan.digest, ...prepared, practice_id: practice?.id ?? null };
    try {
      await saveRecord('set_up', { patient: plan.patient, supersedes: versions.map(({ id }) => id), body, draft: draftName });
      setDraft(null);
    } catch (fault) {
      setProblem(/** @type {any} */ (fault).text ?? 'This could not be saved on this phone. Nothing you entered is lost.');
    }
  };

  return { prepared, set, versions, isChanged, save, problem };
}

/** @param {LedgerRecord | undefined} record @returns {Prepared} */
function preparedIn(record) {
  if (!record) return { on: today(), wishes: NOTHING_WISHED, overrides: [] };
  const { on, wishes = {}, overrides = [] } = record.body;
  return { on, wishes: { ...NOTHING_WISHED, ...wishes }, overrides };
}
