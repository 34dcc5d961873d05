/** The audit of results in a component. While another is worked out, the last one stays, with `isFresh` false. */
import { ask } from '../engine/engine.js';
import { faultsIn } from '../planning/use-answer.js';
import { useEffect, useState } from '../vendor/preact.js';

/** @typedef {{by: string, only: string[] | null, own: string, clinic: string, untold: number, on: string}} Shown */
/** @typedef {{audit: any, of: object | null, faults: import('../planning/use-answer.js').FaultFacts[]}} Last */

/**
 * @param {any[] | null} results
 * @param {Shown} shown
 */
export function useAudit(results, shown) {
  const [last, setLast] = useState(/** @type {Last} */ ({ audit: null, of: null, faults: [] }));
  const [asked, setAsked] = useState(/** @type {object | null} */ (null));
  const wanted = JSON.stringify(shown);

  useEffect(() => {
    if (!results) return undefined;
    let isWanted = true;
    const question = { results, ...shown };
    setAsked(question);
    ask('audit', question).then(
      (audit) => isWanted && setLast({ audit, of: question, faults: [] }),
      (error) => isWanted && setLast((before) => ({ ...before, faults: faultsIn(error) })),
    );
    return () => {
      isWanted = false;
    };
  }, [results, wanted]);

  return { audit: last.audit, question: last.of, faults: last.faults, isFresh: last.of !== null && last.of === asked };
}
