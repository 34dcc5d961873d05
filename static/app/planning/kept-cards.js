/** The cards kept on this device, in the sealed store; `card-keeper.js` says how. */
import { ask, engineState } from '../engine/engine.js';
import { kept, records } from '../store/store.js';
import { createCardKeeper } from './card-keeper.js';

export { cardQuestion, originOf } from './card-keeper.js';

/** @typedef {import('./card-keeper.js').Pieces} Pieces */

const keeper = createCardKeeper({ drafts: kept, records, engineState, ask, whenIdle });

export const { keptCard, keep, keepCard } = keeper;
export const startKeepingCards = keeper.start;

/** @param {() => void} work */
function whenIdle(work) {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(work);
  else setTimeout(work, 200);
}
