/**
 * An answer of the engine inside a component. While a new one is awaited, and after a refusal, the last one stays with
 * `isFresh` false, so that a changed figure redraws in place and a refused one can be taken back; what was answered before
 * comes back at once (the engine answers the same to the same).
 */
import { Refused, ask, engineState } from '../engine/engine.js';
import { useObservable } from '../observable.js';
import { useEffect, useState } from '../vendor/preact.js';

/** @typedef {{code: string, text: string, field: string, value: string, allowed: string}} FaultFacts */
/**
 * @template T
 * @typedef {{answer: T | null, faults: FaultFacts[], isFresh: boolean}} Answered `isFresh`: this is the answer to what is asked now
 */
/** @typedef {{question: string | null, answer: unknown, faults: FaultFacts[]}} Last */

const KEPT = 16;

/** @type {Map<string, unknown>} */
const answered = new Map();

/**
 * @template T
 * @param {string} name of the ask
 * @param {object | null} payload null while there is nothing to ask yet
 * @returns {Answered<T>}
 */
export function useAnswer(name, payload) {
  const question = payload && `${name} ${JSON.stringify(payload)}`;
  const hasFailed = useObservable(engineState).phase === 'failed';
  const [last, setLast] = useState(/** @type {() => Last} */ (() => recalled(question)));

  // Asked again when a failed engine is started again; while it is failed, asking would only start it over and over.
  useEffect(() => {
    if (!question || hasFailed || (last.question === question && last.faults.length === 0)) return undefined;
    if (answered.has(question)) {
      setLast(recalled(question));
      return undefined;
    }
    let isWanted = true;
    ask(name, payload).then(
      (answer) => {
        remember(question, answer);
        if (isWanted) setLast({ question, answer, faults: [] });
      },
      (error) => isWanted && setLast((before) => ({ question, answer: before.answer, faults: faultsIn(error) })),
    );
    return () => {
      isWanted = false;
    };
  }, [question, hasFailed]);

  return { answer: /** @type {T | null} */ (last.answer), faults: last.faults, isFresh: last.question === question && last.faults.length === 0 };
}

/** @param {string | null} question @returns {Last} */
function recalled(question) {
  if (question === null || !answered.has(question)) return { question: null, answer: null, faults: [] };
  return { question, answer: answered.get(question), faults: [] };
}

/**
 * @param {string} question
 * @param {unknown} answer
 */
function remember(question, answer) {
  answered.set(question, answer);
  if (answered.size > KEPT) answered.delete(/** @type {string} */ (answered.keys().next().value));
}

/**
 * The facts of a refusal; anything else that went wrong is one fact too.
 * @param {any} error
 * @returns {FaultFacts[]}
 */
export function faultsIn(error) {
  if (error instanceof Refused) return error.faults;
  return [{ code: error?.code ?? 'engine_failed', text: String(error?.text ?? error?.message ?? error), field: '', value: '', allowed: '' }];
}
