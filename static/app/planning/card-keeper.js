/**
 * Makes cards ahead and keeps them, so that a signed card opens without waiting for the engine.
 *
 * A kept card counts only for the very records it was made from. One at a time, while nothing else is going on; what the
 * engine refuses is not asked again until the app starts anew.
 */
import { practiceOf } from '../preparing/practice.js';
import { setUpsOf } from '../preparing/set-ups.js';
import { heads } from '../store/heads.js';
import { otherEntries, patientNow, piecesOf, presentIn } from './standing.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/**
 * @template T
 * @typedef {{get: () => T, subscribe: (listener: () => void) => unknown}} Watched
 */
/** @typedef {{patient: LedgerRecord, plan: LedgerRecord, signature: LedgerRecord}} Pieces */

/** @param {LedgerRecord} signature */
const nameOf = (signature) => `card/${signature.id}`;

/** Which records a card is made from, as one text. @param {readonly LedgerRecord[]} records @param {Pieces} pieces */
export function originOf(records, pieces) {
  const now = patientNow(records, pieces);
  const { patient, plan, signature } = pieces;
  const { setUp, practice } = preparedFor(records, plan);
  return [patient, plan, signature, now, ...otherEntries(records, pieces), setUp, practice].flatMap((record) => record?.digest ?? []).join(' ');
}

/**
 * What the operation was prepared with: the newest where nobody has chosen yet.
 * @param {readonly LedgerRecord[]} records
 * @param {LedgerRecord} plan
 * @returns {{setUp: LedgerRecord | null, practice: LedgerRecord | null}}
 */
const preparedFor = (records, plan) => ({ setUp: setUpsOf(records, plan)[0] ?? null, practice: practiceOf(records).current });

/**
 * What the engine makes a card of: with the present version of the patient's record where that is another, with the person's
 * other entries, and with what the operation was prepared with.
 * @param {readonly LedgerRecord[]} records
 * @param {Pieces} pieces
 */
export function cardQuestion(records, pieces) {
  const now = patientNow(records, pieces);
  const others = otherEntries(records, pieces);
  const { setUp, practice } = preparedFor(records, pieces.plan);
  return {
    patient: pieces.patient.body,
    plan: pieces.plan.body,
    signature: pieces.signature.body,
    ...presentIn({ now, others }),
    ...(setUp && { set_up: setUp.body }),
    ...(practice && { practice: practice.body }),
  };
}

/**
 * @param {object} means
 * @param {{get: (name: string) => any, keep: (name: string, value: unknown) => void}} means.drafts
 * @param {Watched<readonly LedgerRecord[]>} means.records
 * @param {Watched<{phase: string}>} means.engineState
 * @param {(name: string, payload: object) => Promise<any>} means.ask
 * @param {(work: () => void) => void} means.whenIdle
 */
export function createCardKeeper({ drafts, records, engineState, ask, whenIdle }) {
  /** @type {Set<string>} */
  const refused = new Set();
  let isBusy = false;

  /**
   * @param {Pieces} pieces
   * @returns {any | null} a `Card` of the engine
   */
  function keptCard(pieces) {
    const kept = drafts.get(nameOf(pieces.signature));
    return kept?.origin === originOf(records.get(), pieces) ? kept.card : null;
  }

  /**
   * @param {Pieces} pieces
   * @param {any} card
   */
  const keep = (pieces, card) => drafts.keep(nameOf(pieces.signature), { origin: originOf(records.get(), pieces), card });

  /** Has the engine make the card of a signature and keeps it. @param {LedgerRecord} signature */
  async function keepCard(signature) {
    const pieces = piecesOf(records.get(), signature);
    if (pieces) keep(pieces, await ask('card', cardQuestion(records.get(), pieces)));
  }

  function nextMissing() {
    return heads(records.get(), 'signature').find((signature) => {
      const pieces = piecesOf(records.get(), signature);
      return pieces && !refused.has(signature.id) && !keptCard(pieces);
    });
  }

  /** Looks through the records only when nothing else is going on: while many are sent, they change again and again. */
  function look() {
    if (isBusy || engineState.get().phase !== 'ready') return;
    isBusy = true;
    whenIdle(async () => {
      const signature = nextMissing();
      if (signature) await keepCard(signature).catch((error) => error?.code === 'locked' || refused.add(signature.id));
      isBusy = false;
      if (signature) look();
    });
  }

  /** Begins to make missing cards, as signed plans arrive. */
  function start() {
    records.subscribe(look);
    engineState.subscribe(look);
    look();
  }

  return { keptCard, keep, keepCard, start };
}
