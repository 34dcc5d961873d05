/** The card of a signature: the kept one at once, the engine's own as soon as it has answered, and whether the two agree. */
import { useObservable } from '../../observable.js';
import { cardQuestion, keep, keptCard, originOf } from '../../planning/kept-cards.js';
import { useAnswer } from '../../planning/use-answer.js';
import { records } from '../../store/store.js';
import { canonical } from '../../store/canonical.js';
import { useEffect, useMemo } from '../../vendor/preact.js';

/**
 * @param {import('../../planning/kept-cards.js').Pieces} pieces
 * @returns {{card: any | null, state: 'waiting' | 'kept' | 'checked' | 'changed' | 'refused', faults: import('../../planning/use-answer.js').FaultFacts[]}}
 */
export function useCard(pieces) {
  const all = useObservable(records);
  const origin = originOf(all, pieces);
  const kept = useMemo(() => keptCard(pieces), [origin]);
  const question = useMemo(() => cardQuestion(all, pieces), [origin]);
  const { answer, faults, isFresh } = useAnswer('card', question);
  const isRefused = faults.some(({ code }) => !code.startsWith('engine_'));

  useEffect(() => {
    if (answer && isFresh) keep(pieces, answer);
  }, [answer, isFresh]);

  if (isRefused) return { card: null, state: 'refused', faults };
  if (!isFresh || !answer) return { card: kept, state: kept ? 'kept' : 'waiting', faults };
  const agrees = !kept || canonical(kept) === canonical(answer);
  return { card: answer, state: agrees ? 'checked' : 'changed', faults };
}
