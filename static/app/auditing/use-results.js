/**
 * The result of every operation on this device. The engine works them out in portions; each portion is kept sealed under the ids of
 * its records, so that it is worked out once and leaves this device with any of them.
 */
import { ask, engineState } from '../engine/engine.js';
import { useObservable } from '../observable.js';
import { faultsIn } from '../planning/use-answer.js';
import { release } from '../shell/release.js';
import { heads } from '../store/heads.js';
import { kept, records } from '../store/store.js';
import { useEffect, useMemo, useState } from '../vendor/preact.js';
import { lean, operatedOf } from './operated.js';

/** @typedef {import('./operated.js').Operation} Operation */
/** @typedef {{result: any, person: string, bornOn: string | null}} Counted */
/** @typedef {{engine: string, results: [string, any][]}} Portion a result is null where the plan told no horizontal deviation */

const PORTION = 25;
const SHELF = 'results ';
const engine = release.engine.planner.folder;

/** The results of a notebook's cases by its id. @type {Map<string, any[]>} */
const carriedOver = new Map();

/**
 * @returns {{total: number, done: number, absent: number, untold: number, counted: Counted[] | null, faults: import('../planning/use-answer.js').FaultFacts[]}}
 * `counted` is null until all of them are known
 */
export function useResults() {
  const all = useObservable(records);
  const hasFailed = useObservable(engineState).phase === 'failed';
  const { operations, absent } = useMemo(() => operatedOf(all), [all]);
  const [known, setKnown] = useState(() => recalled());
  const [faults, setFaults] = useState(/** @type {import('../planning/use-answer.js').FaultFacts[]} */ ([]));
  const notebooks = useMemo(() => heads(all, 'notebook'), [all]);
  const [, setRead] = useState(0);

  useEffect(() => {
    if (hasFailed) return undefined;
    let isHere = true;
    readNotebooks(notebooks, () => isHere && setRead((before) => before + 1)).catch((error) => isHere && setFaults(faultsIn(error)));
    return () => {
      isHere = false;
    };
  }, [notebooks, hasFailed]);

  useEffect(() => {
    if (hasFailed) return undefined;
    let isHere = true;
    setFaults([]);
    workOut(operations, known, (now) => isHere && setKnown(now), () => isHere).catch((error) => isHere && setFaults(faultsIn(error)));
    return () => {
      isHere = false;
    };
  }, [operations, hasFailed]);

  const done = operations.filter(({ key }) => known.has(key)).length;
  const read = notebooks.filter(({ id }) => carriedOver.has(id));
  const carried = read.flatMap(({ id }) => carriedOver.get(id) ?? []);
  const isWhole = done === operations.length && read.length === notebooks.length;
  const counted = useMemo(
    () =>
      isWhole
        ? [
            ...operations.flatMap(({ key, person, bornOn }) => (known.get(key) ? [{ result: known.get(key), person, bornOn }] : [])),
            ...carried.map((result) => ({ result, person: result.id, bornOn: null })),
          ]
        : null,
    [operations, notebooks, isWhole],
  );
  const total = operations.length + notebooks.reduce((count, { body }) => count + body.cases.length, 0);
  return { total, done: done + carried.length, absent, untold: counted ? total - counted.length : 0, counted, faults };
}

/** @param {import('../store/envelope.js').LedgerRecord[]} notebooks @param {() => unknown} tell after each */
async function readNotebooks(notebooks, tell) {
  for (const { id, body } of notebooks.filter((each) => !carriedOver.has(each.id))) {
    const outcomes = await ask('outcomes', { notebooks: [{ id, notebook: body }] });
    carriedOver.set(id, outcomes.map((/** @type {any} */ { result }) => lean(result)));
    tell();
  }
}

/** @returns {Map<string, any>} */
function recalled() {
  const portions = kept.names().filter((name) => name.startsWith(SHELF)).map((name) => ({ name, value: /** @type {Portion} */ (kept.get(name)) }));
  for (const { name, value } of portions) if (value.engine !== engine) kept.drop(name);
  return new Map(portions.flatMap(({ value }) => (value.engine === engine ? value.results : [])));
}

/**
 * @param {Operation[]} operations
 * @param {Map<string, any>} known
 * @param {(known: Map<string, any>) => unknown} tell after each portion
 * @param {() => boolean} isWanted
 */
async function workOut(operations, known, tell, isWanted) {
  const missing = operations.filter(({ key }) => !known.has(key));
  const found = new Map(known);
  for (let start = 0; start < missing.length && isWanted(); start += PORTION) {
    const portion = missing.slice(start, start + PORTION);
    const outcomes = await ask('outcomes', { operations: portion.map(({ reported }) => reported) });
    /** @type {[string, any][]} */
    const results = portion.map(({ key }, place) => [key, lean(outcomes[place].result)]);
    for (const [key, result] of results) found.set(key, result);
    if (!isWanted()) return;
    kept.keep(SHELF + portion.map(({ key }) => key).join(' '), { engine, results });
    tell(new Map(found));
  }
}
