/**
 * The result of every operation on this device. The engine works them out in portions; each portion is kept sealed under the ids of
 * its records, so that it is worked out once and leaves this device with any of them.
 */
import { ask, engineState } from '../engine/engine.js';
import { useObservable } from '../observable.js';
import { faultsIn } from '../planning/use-answer.js';
import { release } from '../shell/release.js';
import { kept, records } from '../store/store.js';
import { useEffect, useMemo, useState } from '../vendor/preact.js';
import { lean, operatedOf } from './operated.js';

/** @typedef {import('./operated.js').Operation} Operation */
/** @typedef {{result: any, person: string, bornOn: string | null}} Counted */
/** @typedef {{engine: string, results: [string, any][]}} Portion a result is null where the plan told no horizontal deviation */

const PORTION = 25;
const SHELF = 'results ';
const engine = release.engine.planner.folder;

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
  const counted = useMemo(
    () => (done < operations.length ? null : operations.flatMap(({ key, person, bornOn }) => (known.get(key) ? [{ result: known.get(key), person, bornOn }] : []))),
    [operations, done],
  );
  return { total: operations.length, done, absent, untold: counted ? operations.length - counted.length : 0, counted, faults };
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
