/** One patient's records, arranged as the line they follow: each examination with the plans made from it and their cards. */
import { unsettledOf } from '../../planning/operations.js';
import { find, heads, history, things } from '../../store/heads.js';
import { newestFirst, plansAlone, plansOf, progressOf, signatureOf } from '../patients/progress.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/**
 * @typedef {object} Planned
 * @property {LedgerRecord} plan
 * @property {LedgerRecord} [signature]
 * @property {boolean} patientChanged the patient's details are no longer those the plan was made with
 *
 * @typedef {object} Sitting
 * @property {LedgerRecord} examination
 * @property {number} versions how often it was written, the present version included
 * @property {Planned[]} plans
 *
 * @typedef {object} Line
 * @property {LedgerRecord} patient the newest current version of the patient's record
 * @property {Sitting[]} sittings newest first
 * @property {Planned[]} alone plans whose examination this device was not given
 * @property {Planned[]} outdated plans whose examination has been changed, replaced or taken back since
 * @property {{kind: string, heads: LedgerRecord[]}[]} conflicts things with more than one current version
 * @property {import('../patients/progress.js').Progress} progress
 */

/** Kinds of which one thing can be changed on two devices at once. */
const SETTLED_BY_CHOICE = ['patient', 'examination', 'plan'];

/**
 * @param {readonly LedgerRecord[]} records
 * @param {string} id the patient's
 * @returns {Line | null} null when this phone knows no such patient
 */
export function lineOf(records, id) {
  const [patient] = heads(records, 'patient', id);
  if (!patient) return null;
  const examinations = heads(records, 'examination', id);
  const plans = heads(records, 'plan', id);
  const signatures = heads(records, 'signature', id);

  const planned = (/** @type {LedgerRecord} */ plan) => ({
    plan,
    signature: signatureOf(plan, signatures),
    patientChanged: plan.body.patient_digest !== patient.digest,
  });
  const sittings = newestFirst(examinations).map((examination) => ({
    examination,
    versions: history(records, examination.id).length,
    plans: plansOf(examination, plans).map(planned),
  }));
  const isHere = (/** @type {string} */ wanted) => find(records, wanted) !== undefined;
  const alone = plansAlone(plans, isHere).map(planned);
  const placed = new Set([...alone, ...sittings.flatMap((sitting) => sitting.plans)].map(({ plan }) => plan.id));

  return {
    patient,
    sittings,
    alone,
    outdated: plans.filter((plan) => !placed.has(plan.id)).map(planned),
    conflicts: [
      ...SETTLED_BY_CHOICE.flatMap((kind) =>
        things(records, kind, id)
          .filter((thing) => thing.conflict)
          .map((thing) => ({ kind, heads: thing.heads })),
      ),
      ...unsettledOf(records, id),
    ],
    progress: progressOf({ examinations, plans, signatures }, isHere),
  };
}

/**
 * Why an outdated plan no longer stands.
 *
 * @param {readonly LedgerRecord[]} records
 * @param {LedgerRecord} plan
 */
export function whyOutdated(records, plan) {
  const versions = new Set(history(records, plan.body.examination_id).map(({ id }) => id));
  const current = heads(records, 'examination', plan.patient).some(({ id }) => versions.has(id));
  return current ? 'The examination was changed after this plan was made.' : 'The examination it was made from was taken back.';
}
