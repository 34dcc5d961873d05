/** From a chosen option to a plan record: the engine makes the plan, the ledger keeps it. */
import { ask } from '../engine/engine.js';
import { canonical } from '../store/canonical.js';
import { heads } from '../store/heads.js';
import { records, saveRecord } from '../store/store.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */

/**
 * A patient has one current plan: a new one replaces what was current. The same plan chosen again is no new plan.
 *
 * @param {object} facts
 * @param {LedgerRecord} facts.patient
 * @param {LedgerRecord} facts.examination
 * @param {object} facts.case
 * @param {string} facts.option id
 * @param {string} facts.note
 * @returns {Promise<LedgerRecord>} the plan
 * @throws {import('../engine/engine.js').Refused} when the engine will not plan it, for example `plan_has_stop`
 */
export async function makePlan({ patient, examination, case: ownCase, option, note }) {
  const body = await ask('draft_plan', {
    case: ownCase,
    option,
    patient_id: patient.id,
    patient_digest: patient.digest,
    examination_id: examination.id,
    examination_digest: examination.digest,
    note: note.trim(),
  });
  const current = heads(records.get(), 'plan', patient.patient);
  const same = current.find((plan) => canonical(plan.body) === canonical(body));
  if (same && current.length === 1) return same;
  return saveRecord('plan', { patient: patient.patient, supersedes: current.map(({ id }) => id), body });
}
