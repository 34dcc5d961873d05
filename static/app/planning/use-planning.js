/** What the surgeon is weighing for an examination: table, own figures, aim, what goes together, own results beside it; kept as a draft, so nothing is lost on the way. */
import { useObservable } from '../observable.js';
import { heads } from '../store/heads.js';
import { drafts, records } from '../store/store.js';
import { useState } from '../vendor/preact.js';
import { caseOf } from './case.js';
import { withClinics } from './clinic-tables.js';
import { isCombined, partsOf } from './combining.js';
import { useAnswer } from './use-answer.js';
import { useOwnColumn } from './use-own-column.js';
import { startingTable, usualTable } from './usual-table.js';

/** @typedef {{table: string | null, changes: import('./case.js').Change[], note: string, aim: string, overcorrection_pd: number, combine: string[]}} Planning */
/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */

/** @type {Planning} */
const NOTHING = { table: null, changes: [], note: '', aim: 'distance', overcorrection_pd: 0, combine: [] };

/**
 * @param {LedgerRecord} patient
 * @param {LedgerRecord} examination
 * @param {string} [optionId] the one option in view, which is then all that the case combines
 */
export function usePlanning(patient, examination, optionId) {
  const draftName = `planning/${examination.id}`;
  const [planning, setPlanning] = useState(/** @type {() => Planning} */ (() => ({ ...NOTHING, ...drafts.get(draftName) })));
  const own = heads(useObservable(records), 'dose_table').map(({ body }) => body);
  const about = useAnswer('about', {});
  const tables = withClinics(/** @type {any} */ (about.answer)?.tables ?? [], own);
  const table = planning.table ?? startingTable(tables, usualTable.get())?.id ?? null;
  const combine = optionId === undefined ? planning.combine : isCombined(optionId) ? partsOf(optionId) : [];
  const { changes, aim, overcorrection_pd } = planning;
  const facts = { examination: examination.body, born_on: patient.body.born_on, changes, aim, overcorrection_pd, combine };
  const ownCase = table === null ? null : caseOf({ ...facts, table, clinic_table: own.find(({ id }) => id === table) ?? null });
  const proposed = useAnswer('propose', ownCase && { case: ownCase });
  const ownOf = useOwnColumn(ownCase);

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
    ownOf,
  };
}
