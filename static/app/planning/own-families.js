/** A surgeon's outcomes by family of operations and table, and beside which of them the surgeon wants to see the own results. Pure. */
import { heads } from '../store/heads.js';
import { isCombined } from './combining.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('./reported.js').OwnOperation} OwnOperation */
/** @typedef {{id: string, family: string, result: object | null, past_case: object | null}} Outcome of the engine */
/** @typedef {{family: string, table: string}} Switch */

/**
 * @typedef {object} OwnFamily
 * @property {string} family
 * @property {string} table id of the table
 * @property {string} title the operation in words, without its side
 * @property {string} tableName
 * @property {boolean} isSuggested whether the options of a case can show it: not for several operations at one sitting, nor where the deviation is not horizontal
 * @property {number} operations
 * @property {object[]} cases what `calibrate` is asked with: those that have a measured visit
 * @property {Map<string, LedgerRecord>} done the records of the operations by their ids
 */

/**
 * @param {readonly OwnOperation[]} done
 * @param {readonly (Outcome | null | undefined)[]} outcomes in the same order
 * @param {readonly any[]} [carried] outcomes of cases that were carried over from a notebook: no record of an operation is behind them
 * @returns {OwnFamily[]} the most operations first
 */
export function familiesOf(done, outcomes, carried = []) {
  /** @type {Map<string, OwnFamily>} */
  const families = new Map();
  done.forEach(({ operation, plan }, place) => {
    const outcome = outcomes[place];
    if (!outcome) return;
    const stamp = plan.body.option.table ?? plan.body.table;
    const key = `${outcome.family} ${stamp.id}`;
    /** @type {OwnFamily} */
    const found = families.get(key) ?? {
      family: outcome.family,
      table: stamp.id,
      title: withoutSide(plan.body.option.title),
      tableName: stamp.name,
      isSuggested: !isCombined(outcome.family) && (plan.body.option.answers ?? 'horizontal') === 'horizontal',
      operations: 0,
      cases: [],
      done: new Map(),
    };
    found.operations += 1;
    found.done.set(operation.id, operation);
    if (outcome.past_case) found.cases.push(outcome.past_case);
    families.set(key, found);
  });
  for (const { family, result, past_case } of carried) {
    const key = `${family} ${result.table}`;
    /** @type {OwnFamily} */
    const found = families.get(key) ?? { family, table: result.table, title: carriedTitle(family), tableName: result.table, isSuggested: true, operations: 0, cases: [], done: new Map() };
    found.operations += 1;
    if (past_case) found.cases.push(past_case);
    families.set(key, found);
  }
  return [...families.values()].sort((a, b) => b.operations - a.operations || (a.family < b.family ? -1 : 1));
}

/** `recess-both-mr` as `Recess both MR`: all that is known of an operation that no plan stands behind. @param {string} family */
const carriedTitle = (family) => family.replace(/-(mr|lr)/g, (_, muscle) => ` ${muscle.toUpperCase()}`).replaceAll('-', ' ').replace(/^./, (letter) => letter.toUpperCase());

/** `Right eye: recess ...` as `One eye: recess ...`. @param {string} title */
const withoutSide = (title) => title.replace(/^(Right|Left) eye:/, 'One eye:').replace(/ the (right|left) /, ' one ');

/**
 * What the surgeon switched on; nothing where no record says so. Two versions side by side: the newest counts.
 * @param {readonly LedgerRecord[]} records
 * @param {string} surgeon
 */
export function switchesOf(records, surgeon) {
  const versions = heads(records, 'own_results').filter(({ body }) => body.surgeon_name === surgeon);
  /** @type {Switch[]} */
  const on = versions[0]?.body.switched_on ?? [];
  return { versions, on };
}

/** @param {readonly Switch[]} on @param {Switch} which */
export const isOn = (on, which) => on.some(({ family, table }) => family === which.family && table === which.table);

/** @param {readonly Switch[]} on @param {Switch} which @returns {Switch[]} */
export const turnedSwitch = (on, { family, table }) =>
  isOn(on, { family, table }) ? on.filter((each) => each.family !== family || each.table !== table) : [...on, { family, table }];
