/** Whether a plan, and a card made from it, still stands. Pure: records in, facts out. */
import { find, heads, history, retractionOf } from '../store/heads.js';
import { membersOf } from '../store/joined.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {readonly LedgerRecord[]} Records */

/**
 * @typedef {object} Standing
 * @property {LedgerRecord | null} retraction that takes the plan or the signature back
 * @property {LedgerRecord[]} successors current plans that replace this one
 * @property {boolean} examinationChanged
 * @property {boolean} patientChanged
 */

/**
 * @param {Records} records
 * @param {LedgerRecord} plan
 * @param {LedgerRecord} [signature]
 * @returns {Standing}
 */
export function standingOf(records, plan, signature) {
  const plans = heads(records, 'plan', plan.patient);
  const family = new Set(history(records, plan.id).map(({ id }) => id));
  const retraction = retractionOf(records, plan.id) ?? (signature ? retractionOf(records, signature.id) : null);
  const isCurrent = plans.some(({ id }) => id === plan.id);
  const replaced = !isCurrent && records.some(({ supersedes }) => supersedes.includes(plan.id));
  return {
    retraction,
    successors: replaced ? plans.filter(({ id }) => family.has(id)) : [],
    examinationChanged: hasChanged(records, 'examination', plan.body.examination_id, plan.patient),
    patientChanged: hasChanged(records, 'patient', plan.body.patient_id, plan.patient),
  };
}

/** Whether nobody may operate by it any more. @param {Standing} standing */
export const isVoid = ({ retraction, successors }) => retraction !== null || successors.length > 0;

/**
 * The plan's own current signature, if it has one.
 * @param {Records} records
 * @param {LedgerRecord} plan
 */
export const signatureOf = (records, plan) =>
  heads(records, 'signature', plan.patient).find(({ body }) => body.plan_id === plan.id && body.plan_digest === plan.digest);

/**
 * What a card is made of, or null where this phone lacks a piece.
 * @param {Records} records
 * @param {LedgerRecord} signature
 */
export function piecesOf(records, signature) {
  const plan = find(records, signature.body.plan_id);
  const patient = plan && find(records, plan.body.patient_id);
  return plan && patient ? { patient, plan, signature } : null;
}

/**
 * The present version of the patient's record, where it is another than the one that was signed.
 * @param {Records} records
 * @param {{patient: LedgerRecord}} pieces
 */
export const patientNow = (records, { patient }) => inOrder(heads(records, 'patient', patient.patient)).findLast(({ id }) => id !== patient.id) ?? null;

/**
 * The present records of the same person under other entries, in the order in which every device and the server read them.
 * @param {Records} records
 * @param {{patient: LedgerRecord}} pieces
 */
export function otherEntries(records, { patient: { patient } }) {
  const others = membersOf(records, patient).filter((member) => member !== patient).sort();
  return others.flatMap((member) => inOrder(heads(records, 'patient', member)));
}

/**
 * Both as the engine is asked with them, left out where there is nothing.
 * @param {{now: LedgerRecord | null, others: LedgerRecord[]}} present
 */
export const presentIn = ({ now, others }) => ({ ...(now && { patient_now: now.body }), ...(others.length > 0 && { other_entries: others.map(({ body }) => body) }) });

/** @param {LedgerRecord[]} versions */
const inOrder = (versions) => [...versions].sort((a, b) => (a.id < b.id ? -1 : 1));

/**
 * @param {Records} records
 * @param {string} kind
 * @param {string} id
 * @param {string} patient
 */
const hasChanged = (records, kind, id, patient) => find(records, id) !== undefined && !heads(records, kind, patient).some((head) => head.id === id);
