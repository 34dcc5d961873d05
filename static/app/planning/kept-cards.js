/**
 * Cards made ahead and kept in the sealed store, so that a signed card opens without waiting for the engine.
 *
 * A kept card counts only for the very records it was made from; the card screen has the engine make it again and compares.
 */
import { ask, engineState } from '../engine/engine.js';
import { heads } from '../store/heads.js';
import { drafts, records } from '../store/store.js';
import { piecesOf } from './standing.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {{patient: LedgerRecord, plan: LedgerRecord, signature: LedgerRecord}} Pieces */

/** @param {LedgerRecord} signature */
const nameOf = (signature) => `card/${signature.id}`;

/** @param {Pieces} pieces */
const originOf = ({ patient, plan, signature }) => [patient, plan, signature].map(({ digest }) => digest).join(' ');

/**
 * What the engine makes a card of.
 * @param {Pieces} pieces
 */
export const cardQuestion = ({ patient, plan, signature }) => ({ patient: patient.body, plan: plan.body, signature: signature.body });

/**
 * @param {Pieces} pieces
 * @returns {any | null} a `Card` of the engine
 */
export function keptCard(pieces) {
  const kept = drafts.get(nameOf(pieces.signature));
  return kept?.origin === originOf(pieces) ? kept.card : null;
}

/**
 * @param {Pieces} pieces
 * @param {any} card
 */
export const keep = (pieces, card) => drafts.keep(nameOf(pieces.signature), { origin: originOf(pieces), card });

/**
 * Has the engine make the card of a signature and keeps it.
 * @param {LedgerRecord} signature
 */
export async function keepCard(signature) {
  const pieces = piecesOf(records.get(), signature);
  if (!pieces) return;
  keep(pieces, await ask('card', cardQuestion(pieces)));
}

/**
 * Makes missing cards while nothing else is going on, one at a time, as signed plans arrive. Called once by the shell.
 * @param {{whenIdle?: (work: () => void) => void}} [means]
 */
export function startKeepingCards({ whenIdle = idle } = {}) {
  /** @type {Set<string>} */
  const refused = new Set();
  let isWaiting = false;

  const look = () => {
    if (isWaiting || engineState.get().phase !== 'ready') return;
    const next = heads(records.get(), 'signature').find((signature) => {
      const pieces = piecesOf(records.get(), signature);
      return pieces && !refused.has(signature.id) && !keptCard(pieces);
    });
    if (!next) return;
    isWaiting = true;
    whenIdle(async () => {
      await keepCard(next).catch(() => refused.add(next.id));
      isWaiting = false;
      look();
    });
  };

  records.subscribe(look);
  engineState.subscribe(look);
  look();
}

/** @param {() => void} work */
function idle(work) {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(work);
  else setTimeout(work, 200);
}
