/** What was prepared for a plan. Pure: records in, facts out. */
import { heads } from '../store/heads.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */

/**
 * @typedef {object} Wishes
 * @property {boolean} adjustable
 * @property {'yes' | 'no' | 'unknown'} cooperation
 * @property {boolean} avoid_general
 * @property {boolean} sedation_team
 * @property {boolean} lost_muscle
 * @property {string | null} block_at
 */
/** @typedef {{item: string, choice: string, reason: string}} Override */
/** @typedef {{on: string, wishes: Wishes, overrides: Override[]}} Prepared */

/** @type {Wishes} */
export const NOTHING_WISHED = { adjustable: false, cooperation: 'unknown', avoid_general: false, sedation_team: false, lost_muscle: false, block_at: null };

/**
 * The current set-ups of a plan, newest first; more than one were made apart.
 *
 * @param {readonly LedgerRecord[]} records
 * @param {LedgerRecord} plan
 */
export const setUpsOf = (records, plan) => heads(records, 'set_up', plan.patient).filter(({ body }) => body.plan_id === plan.id && body.plan_digest === plan.digest);

/**
 * What the engine makes a set-up sheet of.
 *
 * @param {{patient: LedgerRecord, plan: LedgerRecord, signature?: LedgerRecord}} pieces
 * @param {Prepared} prepared
 * @param {LedgerRecord | null} practice
 */
export const setUpQuestion = ({ patient, plan, signature }, { on, wishes, overrides }, practice) => ({
  patient: patient.body,
  plan: plan.body,
  signature: signature?.body ?? null,
  on,
  wishes,
  overrides,
  practice: practice?.body ?? null,
});

/**
 * The surgeon's choice for one item, or the rules' again.
 *
 * @param {Override[]} overrides
 * @param {string} item
 * @param {Override | null} override
 */
export const withOverride = (overrides, item, override) => [...overrides.filter((each) => each.item !== item), ...(override ? [override] : [])];
