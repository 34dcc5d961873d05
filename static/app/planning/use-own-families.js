/** The families of the surgeon who is here. The engine works the outcomes out in portions; each is kept as long as its records are the same. */
import { ask, engineState } from '../engine/engine.js';
import { useObservable } from '../observable.js';
import { session } from '../session/session.js';
import { heads } from '../store/heads.js';
import { records } from '../store/store.js';
import { useEffect, useState } from '../vendor/preact.js';
import { reportedBy } from './reported.js';
import { familiesOf, switchesOf } from './own-families.js';
import { faultsIn } from './use-answer.js';

/** @typedef {import('./own-families.js').Outcome} Outcome */

const PORTION = 20;

/** What the engine said of each; null where it refuses to read one. @type {Map<string, Outcome | null>} */
const worked = new Map();

/** What the engine said of the cases of a notebook. @type {Map<string, any[]>} */
const carriedOver = new Map();

/** @param {boolean} [isWanted] false: nothing is worked out */
export function useOwnFamilies(isWanted = true) {
  const all = useObservable(records);
  const surgeon = useObservable(session).user?.full_name ?? '';
  const hasFailed = useObservable(engineState).phase === 'failed';
  const [, setRead] = useState(0);
  const [faults, setFaults] = useState(/** @type {import('./use-answer.js').FaultFacts[]} */ ([]));
  const done = isWanted ? reportedBy(all, surgeon) : [];
  const missing = done.filter(({ key }) => !worked.has(key));
  const notebooks = isWanted ? heads(all, 'notebook').filter(({ body }) => body.surgeon_name === surgeon) : [];
  const unread = notebooks.filter(({ id }) => !carriedOver.has(id));

  useEffect(() => {
    if ((missing.length === 0 && unread.length === 0) || hasFailed) return undefined;
    let isHere = true;
    const work = async () => {
      for (let start = 0; start < missing.length && isHere; start += PORTION) {
        const portion = missing.slice(start, start + PORTION);
        const outcomes = await outcomesOf(portion);
        outcomes.forEach((outcome, place) => worked.set(portion[place].key, outcome));
        if (isHere) setRead((before) => before + portion.length);
      }
      for (const { id, body } of isHere ? unread : []) {
        carriedOver.set(id, await ask('outcomes', { notebooks: [{ id, notebook: body }] }));
        if (isHere) setRead((before) => before + 1);
      }
    };
    setFaults([]);
    work().catch((error) => isHere && setFaults(faultsIn(error)));
    return () => {
      isHere = false;
    };
  }, [all, surgeon, isWanted, hasFailed]);

  const carried = notebooks.flatMap(({ id }) => carriedOver.get(id) ?? []);
  const families = familiesOf(done, done.map(({ key }) => worked.get(key)), carried);
  const refused = done.filter(({ key }) => worked.get(key) === null).length;
  return { surgeon, families, ...switchesOf(all, surgeon), operations: done.length + casesIn(notebooks), waiting: missing.length + casesIn(unread), refused, faults };
}

/** @param {import('../store/envelope.js').LedgerRecord[]} notebooks */
const casesIn = (notebooks) => notebooks.reduce((count, { body }) => count + body.cases.length, 0);

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
