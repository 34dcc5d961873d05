/** Which table and which own figures the surgeon is weighing for an examination; kept as a draft, so nothing is lost on the way. */
import { drafts } from '../store/store.js';
import { useState } from '../vendor/preact.js';
import { useAnswer } from './use-answer.js';
import { caseOf } from './case.js';
import { startingTable, usualTable } from './usual-table.js';

/** @typedef {{table: string | null, changes: import('./case.js').Change[], note: string}} Planning */
/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */

/** @type {Planning} */
const NOTHING = { table: null, changes: [], note: '' };

/**
 * @param {LedgerRecord} patient
 * @param {LedgerRecord} examination
 */
export function usePlanning(patient, examination) {
  const draftName = `planning/${examination.id}`;
  const [planning, setPlanning] = useState(/** @type {Planning} */ (drafts.get(draftName) ?? NOTHING));
  const about = useAnswer('about', {});
  const tables = /** @type {any} */ (about.answer)?.tables ?? [];
  const table = planning.table ?? startingTable(tables, usualTable.get())?.id ?? null;
  const ownCase =
    table === null ? null : caseOf({ examination: examination.body, table, born_on: patient.body.born_on, changes: planning.changes });
  const proposed = useAnswer('propose', ownCase && { case: ownCase });

  /** @param {Partial<Planning>} fields */
  const set = (fields) => {
    const next = { ...planning, ...fields };
    drafts.keep(draftName, next);
    setPlanning(next);
  };

  return {
    planning,
    set,
    tables,
    table,
    case: ownCase,
    proposal: /** @type {any} */ (proposed.answer),
    faults: [...about.faults, ...proposed.faults],
    isFresh: proposed.isFresh,
  };
}
