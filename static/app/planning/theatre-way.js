/** How far a signed plan has come through theatre, and what comes next for whoever is here. Pure: records in, facts out. */
import { listsOf } from '../preparing/lists.js';
import { setUpsOf } from '../preparing/set-ups.js';
import { operationsBy } from './operations.js';
import { isVoid, standingOf } from './standing.js';
import { nextPhase, phasesOf } from './theatre-checks.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {'set-up' | 'sign in' | 'time out' | 'operation' | 'sign out' | 'adjustment'} TheatreStep */

/**
 * @typedef {object} TheatreWay
 * @property {boolean} isPrepared a set-up was saved
 * @property {import('./theatre-checks.js').PhaseState} [phase] the check to go through next
 * @property {boolean} isRecorded
 * @property {boolean} isUnsettled several records of one operation, of which nobody has said which is right
 * @property {boolean} isOpen a suture waits to be adjusted
 * @property {{id: string, on: string, number: number} | null} place on the latest day's list that names the plan
 * @property {TheatreStep | null} next
 */

/**
 * @param {readonly LedgerRecord[]} records
 * @param {{plan: LedgerRecord, signature: LedgerRecord}} pieces
 * @param {(kind: string) => boolean} may whether the person who is here may write a kind
 * @returns {TheatreWay}
 */
export function theatreWay(records, { plan, signature }, may) {
  const operated = operationsBy(records, signature);
  const found = {
    isPrepared: setUpsOf(records, plan).length > 0,
    phase: nextPhase(phasesOf(records, signature.id)),
    isRecorded: operated.length > 0,
    isUnsettled: operated.length > 1 || operated.some(({ adjustments }) => adjustments.length > 1),
    isOpen: Boolean(operated.at(-1)?.open),
  };
  const isOver = isVoid(standingOf(records, plan, signature));
  return { ...found, place: placeOf(records, plan), next: isOver ? null : nextOf(found, may) };
}

/**
 * Set-up, sign in, time out, operation, sign out, adjustment: the first that is not done and that this person may do.
 *
 * @param {Pick<TheatreWay, 'isPrepared' | 'phase' | 'isRecorded' | 'isOpen'>} found
 * @param {(kind: string) => boolean} may
 * @returns {TheatreStep | null}
 */
function nextOf({ isPrepared, phase, isRecorded, isOpen }, may) {
  const check = phase?.phase;
  if (check === 'sign in' && !isPrepared && may('set_up')) return 'set-up';
  if ((check === 'sign in' || check === 'time out') && may('theatre_check')) return check;
  if (check !== 'sign in' && check !== 'time out' && !isRecorded && may('operation')) return 'operation';
  if (check === 'sign out' && may('theatre_check')) return check;
  return check === undefined && isOpen && may('adjustment') ? 'adjustment' : null;
}

/** @param {readonly LedgerRecord[]} records @param {LedgerRecord} plan */
function placeOf(records, plan) {
  const list = listsOf(records).findLast(({ current }) => placeIn(current, plan) >= 0);
  return list ? { id: list.id, on: list.current.body.on, number: placeIn(list.current, plan) + 1 } : null;
}

/** @param {LedgerRecord} list @param {LedgerRecord} plan */
const placeIn = ({ body }, plan) => (body.entries ?? []).findIndex((/** @type {any} */ entry) => entry.plan_id === plan.id);
