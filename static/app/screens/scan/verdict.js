/** What this device knows of a card that came from paper. Pure: records in, facts out. */
import { isVoid, piecesOf, signatureOf, standingOf } from '../../planning/standing.js';
import { find, heads, retractionOf } from '../../store/heads.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */
/**
 * @typedef {object} Verdict
 * @property {'same' | 'replaced' | 'taken back' | 'another here' | 'unknown here'} word
 * @property {LedgerRecord} [plan] the plan that is to be looked at: the same one, its successor, or another one of the patient
 * @property {LedgerRecord} [signature] its signature, where this device has it
 */

/**
 * @param {readonly LedgerRecord[]} records
 * @param {{plan_id: string, plan_digest: string, patient_id: string}} told by the code
 * @returns {Verdict}
 */
export function verdictOn(records, { plan_id: id, plan_digest: digest, patient_id: patientId }) {
  if (retractionOf(records, id)) return { word: 'taken back' };
  const plan = find(records, id);
  if (plan && plan.digest === digest) return verdictOnOwn(records, plan);
  const successor = records.find(({ kind, supersedes }) => kind === 'plan' && supersedes.includes(id));
  if (successor) return signed(records, 'replaced', successor);
  const patient = find(records, patientId)?.patient;
  const other = patient && heads(records, 'plan', patient).find((each) => signatureOf(records, each));
  return other ? signed(records, 'another here', other) : { word: 'unknown here' };
}

/** @param {readonly LedgerRecord[]} records @param {LedgerRecord} plan @returns {Verdict} */
function verdictOnOwn(records, plan) {
  const signature = signatureOf(records, plan);
  const standing = standingOf(records, plan, signature);
  if (standing.retraction) return { word: 'taken back' };
  if (isVoid(standing)) return signed(records, 'replaced', standing.successors[0]);
  if (signature) return { word: 'same', plan, signature };
  const signatures = records.filter(({ kind, body }) => kind === 'signature' && body.plan_id === plan.id);
  return { word: signatures.some(({ id }) => retractionOf(records, id)) ? 'taken back' : 'unknown here' };
}

/** @param {readonly LedgerRecord[]} records @param {Verdict['word']} word @param {LedgerRecord} plan @returns {Verdict} */
const signed = (records, word, plan) => ({ word, plan, signature: signatureOf(records, plan) });

/**
 * What this device makes its own card of where the paper is of the same one, or null: the paper's card is shown then.
 * @param {readonly LedgerRecord[]} records
 * @param {Verdict} verdict
 */
export const ownPieces = (records, { word, signature }) => (word === 'same' && signature ? piecesOf(records, signature) : null);
