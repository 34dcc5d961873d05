/** Who may have been entered twice, asked of the engine once for everybody; a save that changes no patient asks nothing anew. */
import { ask } from '../engine/engine.js';
import { observable, useObservable } from '../observable.js';
import { kept } from '../store/store.js';
import { useEffect, useMemo } from '../vendor/preact.js';
import { apartName, question, twinsOf } from './twins.js';
import { useRights } from './use-rights.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */

const pairs = observable(/** @type {import('./twins.js').Pair[]} */ ([]));
let lastAsked = '';

/**
 * @param {readonly LedgerRecord[]} records
 * @returns {Map<string, import('./twins.js').Twin[]>} by patient; nobody for who may not join
 */
export function useTwins(records) {
  const may = useRights().write('join');
  const found = useObservable(pairs);
  useEffect(() => {
    if (may) look(records);
  }, [records, may]);
  return useMemo(() => twinsOf(records, may ? found : [], areTwo), [records, found, may]);
}

/** @param {readonly LedgerRecord[]} records */
async function look(records) {
  const asked = question(records);
  const text = JSON.stringify(asked);
  if (text === lastAsked) return;
  lastAsked = text;
  try {
    const answer = await ask('entered_twice', asked);
    if (lastAsked === text) pairs.set(answer);
  } catch {
    // It is only a hint: without the engine there is none, and it is asked for again when the records change.
    lastAsked = '';
  }
}

/** @param {string} one @param {string} other */
const areTwo = (one, other) => kept.get(apartName(one, other)) === true;
