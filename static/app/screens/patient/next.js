/** The one obvious next step for a patient, and a quieter second one. */

/**
 * @param {string} id the patient's
 * @param {import('../patients/progress.js').Progress} progress
 * @param {boolean} unfinished an examination was begun and not yet saved
 * @returns {{next: {label: string, to: string}, also?: {label: string, to: string}}}
 */
export function nextSteps(id, progress, unfinished) {
  const home = `/patients/${id}`;
  const measure = { label: 'Measure', to: `${home}/measure` };
  if (unfinished) return { next: { ...measure, label: 'Continue measuring' } };
  if (progress.state === 'to measure') return { next: measure };

  const again = { ...measure, label: 'Measure again' };
  if (progress.state === 'measured') return { next: { label: 'See findings', to: `${home}/findings/${progress.examination.id}` }, also: again };
  if (progress.state === 'planned') return { next: { label: 'Sign the plan', to: `${home}/sign/${progress.plan.id}` }, also: again };
  return { next: { label: 'Open the card', to: `${home}/card/${progress.signature.id}` }, also: again };
}
