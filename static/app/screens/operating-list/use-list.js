/** The list as it is being put together: what was saved, what was changed since as a draft, and saving it as a later version. */
import { canonical } from '../../store/canonical.js';
import { drafts, saveRecord } from '../../store/store.js';
import { useState } from '../../vendor/preact.js';

/** @typedef {import('../../preparing/lists.js').OperatingList} OperatingList */

/**
 * @param {string} name the list's id, or `new`
 * @param {import('../../store/envelope.js').LedgerRecord[]} versions current ones, newest first
 * @param {OperatingList} blank
 */
export function useList(name, versions, blank) {
  const draftName = `operating_list/${name}`;
  const saved = versions[0] ? filled(versions[0].body) : null;
  const [draft, setDraft] = useState(/** @type {() => OperatingList | null} */ (() => drafts.get(draftName) ?? null));
  const [problem, setProblem] = useState('');
  const list = draft ?? saved ?? blank;
  const isChanged = !saved || (draft !== null && canonical(draft) !== canonical(saved));

  /** @param {Partial<OperatingList>} fields */
  const set = (fields) => {
    const next = { ...list, ...fields };
    drafts.keep(draftName, next);
    setDraft(next);
  };

  const undo = () => {
    drafts.drop(draftName);
    setDraft(null);
  };

  /** @returns {Promise<string | null>} the list's id once it is saved */
  const save = async () => {
    setProblem('');
    const body = { ...list, team: list.team.trim(), place: list.place.trim() };
    try {
      const record = await saveRecord('operating_list', { patient: versions[0]?.patient, supersedes: versions.map(({ id }) => id), body, draft: draftName });
      setDraft(null);
      return record.patient;
    } catch (fault) {
      setProblem(/** @type {any} */ (fault).text ?? 'This could not be saved on this phone. Nothing you entered is lost.');
      return null;
    }
  };

  return { list, set, undo, save, isChanged, isNew: !saved, problem };
}

/** With what a body may leave out. @param {any} body @returns {OperatingList} */
const filled = (body) => ({
  schema: 1,
  on: body.on,
  team: body.team,
  place: body.place ?? '',
  starts_at: body.starts_at ?? '08:00',
  entries: (body.entries ?? []).map((/** @type {any} */ entry) => ({ patient_id: entry.patient_id, plan_id: entry.plan_id, duration_min: entry.duration_min, note: entry.note ?? '' })),
});
