/** The families of the surgeon who is here. The engine works the outcomes out in portions; each is kept as long as its records are the same. */
import { ask, engineState } from '../engine/engine.js';
import { useObservable } from '../observable.js';
import { session } from '../session/session.js';
import { records } from '../store/store.js';
import { useEffect, useState } from '../vendor/preact.js';
import { reportedBy } from './reported.js';
import { familiesOf, switchesOf } from './own-families.js';
import { faultsIn } from './use-answer.js';

/** @typedef {import('./own-families.js').Outcome} Outcome */

const PORTION = 20;

/** What the engine said of each; null where it refuses to read one. @type {Map<string, Outcome | null>} */
const worked = new Map();

/** @param {boolean} [isWanted] false: nothing is worked out */
export function useOwnFamilies(isWanted = true) {
  const all = useObservable(records);
  const surgeon = useObservable(session).user?.full_name ?? '';
  const hasFailed = useObservable(engineState).phase === 'failed';
  const [, setRead] = useState(0);
  const [faults, setFaults] = useState(/** @type {import('./use-answer.js').FaultFacts[]} */ ([]));
  const done = isWanted ? reportedBy(all, surgeon) : [];
  const missing = done.filter(({ key }) => !worked.has(key));

  useEffect(() => {
    if (missing.length === 0 || hasFailed) return undefined;
    let isHere = true;
    const work = async () => {
      for (let start = 0; start < missing.length && isHere; start += PORTION) {
        const portion = missing.slice(start, start + PORTION);
        const outcomes = await outcomesOf(portion);
        outcomes.forEach((outcome, place) => worked.set(portion[place].key, outcome));
        if (isHere) setRead((before) => before + portion.length);
      }
    };
    setFaults([]);
    work().catch((error) => isHere && setFaults(faultsIn(error)));
    return () => {
      isHere = false;
    };
  }, [all, surgeon, isWanted, hasFailed]);

  const families = familiesOf(done, done.map(({ key }) => worked.get(key)));
  const refused = done.filter(({ key }) => worked.get(key) === null).length;
  return { surgeon, families, ...switchesOf(all, surgeon), operations: done.length, waiting: missing.length, refused, faults };
}

/**
 * A portion of which one is refused is asked one by one, so that it does not keep the others back.
 * @param {import('./reported.js').OwnOperation[]} portion
 * @returns {Promise<(Outcome | null)[]>}
 */
async function outcomesOf(portion) {
  try {
    return await ask('outcomes', { operations: portion.map(({ reported }) => reported) });
  } catch (error) {
    const isOfTheEngine = faultsIn(error).some(({ code }) => code.startsWith('engine'));
    if (isOfTheEngine) throw error;
    if (portion.length === 1) return [null];
    const each = [];
    for (const operation of portion) each.push(...(await outcomesOf([operation])));
    return each;
  }
}
