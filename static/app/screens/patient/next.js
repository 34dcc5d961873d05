/** The one obvious next step for a patient, and a quieter second one. */

/**
 * @param {string} id the patient's
 * @param {import('../patients/progress.js').Progress} progress
 * @param {boolean} unfinished an examination was begun and not yet saved
 * @returns {{next: {label: string, to: string}, also?: {label: string, to: string}}}
 */
export function nextSteps(id, { state, examination, plan, signature }, unfinished) {
  const home = `/patients/${id}`;
  const measure = { label: 'Measure', to: `${home}/measure` };
  if (unfinished) return { next: { ...measure, label: 'Continue measuring' } };
  if (state === 'to measure') return { next: measure };

  const again = { ...measure, label: 'Measure again' };
  if (state === 'measured') return { next: { label: 'See findings', to: `${home}/findings/${examination.id}` }, also: again };
  if (state === 'planned') return { next: { label: 'Sign the plan', to: `${home}/sign/${plan.id}` }, also: again };
  return { next: { label: 'Open the card', to: `${home}/card/${signature.id}` }, also: again };
}
