/** Who may have been entered twice, asked of the engine once for everybody; a save that changes no patient asks nothing anew. */
import { kept } from '../store/store.js';
import { useMemo } from '../vendor/preact.js';
import { apartName, question, twinsOf } from './twins.js';
import { useAnswer } from './use-answer.js';
import { useRights } from './use-rights.js';

/**
 * @param {readonly import('../store/envelope.js').LedgerRecord[]} records
 * @returns {Map<string, import('./twins.js').Twin[]>} by patient; nobody for who may not join
 */
export function useTwins(records) {
  const may = useRights().write('join');
  const asked = useMemo(() => (may ? question(records) : null), [records, may]);
  const { answer } = useAnswer('entered_twice', asked);
  return useMemo(() => twinsOf(records, /** @type {any} */ (answer) ?? [], areTwo), [records, answer]);
}

/** @param {string} one @param {string} other */
const areTwo = (one, other) => kept.get(apartName(one, other)) === true;
