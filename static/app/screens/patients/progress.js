/** How far one patient's case has come along the line, from the current records alone. */

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {'to measure' | 'measured' | 'planned' | 'signed'} State */

/** The states in the order of the line. @type {State[]} */
export const STATES = ['to measure', 'measured', 'planned', 'signed'];

/**
 * The state of the newest examination (by the day it was done), the plan made from it (the signed one if any is) and the signature
 * that fits that plan. A theatre device is given no examinations; there the plans stand for themselves.
 *
 * @typedef {{state: 'to measure'}
 *   | {state: 'measured', examination: LedgerRecord}
 *   | {state: 'planned', examination?: LedgerRecord, plan: LedgerRecord}
 *   | {state: 'signed', examination?: LedgerRecord, plan: LedgerRecord, signature: LedgerRecord}} Progress
 */

/**
 * A plan counts only if it was made from the very version of the examination that is current, a signature only if it
 * was given for the very plan: what was changed after it, it does not cover.
 *
 * @param {{examinations: LedgerRecord[], plans: LedgerRecord[], signatures: LedgerRecord[]}} current heads of one patient
 * @param {(id: string) => boolean} isHere whether this device holds the record
 * @returns {Progress}
 */
export function progressOf({ examinations, plans, signatures }, isHere) {
  const [examination] = newestFirst(examinations);
  const made = examination ? plansOf(examination, plans) : plansAlone(plans, isHere);
  const from = examination ? { examination } : {};
  for (const plan of made) {
    const signature = signatureOf(plan, signatures);
    if (signature) return { state: 'signed', ...from, plan, signature };
  }
  if (made.length > 0) return { state: 'planned', ...from, plan: made[0] };
  return examination ? { state: 'measured', examination } : { state: 'to measure' };
}

/**
 * @param {LedgerRecord[]} plans
 * @param {(id: string) => boolean} isHere
 * @returns {LedgerRecord[]} those whose examination this device does not hold in any version, newest first
 */
export function plansAlone(plans, isHere) {
  return plans.filter((plan) => !isHere(plan.body.examination_id)).sort((a, b) => (a.id < b.id ? 1 : -1));
}

/** @param {LedgerRecord[]} examinations */
export function newestFirst(examinations) {
  const key = (/** @type {LedgerRecord} */ record) => `${record.body.examined_on} ${record.id}`;
  return [...examinations].sort((a, b) => (key(a) < key(b) ? 1 : -1));
}

/**
 * @param {LedgerRecord} examination
 * @param {LedgerRecord[]} plans
 * @returns {LedgerRecord[]} made from this version of the examination, newest first
 */
export function plansOf(examination, plans) {
  return plans
    .filter((plan) => plan.body.examination_id === examination.id && plan.body.examination_digest === examination.digest)
    .sort((a, b) => (a.id < b.id ? 1 : -1));
}

/**
 * @param {LedgerRecord} plan
 * @param {LedgerRecord[]} signatures
 * @returns {LedgerRecord | undefined}
 */
export function signatureOf(plan, signatures) {
  return signatures.find(({ body }) => body.plan_id === plan.id && body.plan_digest === plan.digest);
}
