/** The one obvious next step for a patient, and a quieter second one, as far as the person here may take them. */

/**
 * @param {string} id the patient's
 * @param {import('../patients/progress.js').Progress} progress
 * @param {{unfinished: boolean, visit?: {to: string, isBegun: boolean} | null, may: (kind: string) => boolean}} here `unfinished`: an
 *   examination was begun and not yet saved; `visit`: the case is at its visits after the operation; `may`: whether the person may
 *   write records of a kind
 * @returns {{next?: {label: string, to: string}, also?: {label: string, to: string}}}
 */
export function nextSteps(id, progress, { unfinished, visit, may }) {
  const home = `/patients/${id}`;
  const measure = (/** @type {string} */ label) => (may('examination') ? { label, to: `${home}/measure` } : undefined);
  if (visit && may('follow_up') && (visit.isBegun || !unfinished)) {
    return { next: { label: visit.isBegun ? 'Continue the visit' : 'Record a visit', to: visit.to }, also: measure(unfinished ? 'Continue measuring' : 'Measure again') };
  }
  if (unfinished && may('examination')) return { next: measure('Continue measuring') };

  const also = measure('Measure again');
  switch (progress.state) {
    case 'to measure':
      return { next: measure('Measure') };
    case 'measured':
      return { next: { label: 'See findings', to: `${home}/findings/${progress.examination.id}` }, also };
    case 'planned':
      return { next: { label: may('signature') ? 'Sign the plan' : 'See the plan', to: `${home}/sign/${progress.plan.id}` }, also };
    default:
      return { next: { label: 'Open the card', to: `${home}/card/${progress.signature.id}` }, also };
  }
}
