/** Whether the next step of a case is a visit after its operation. Values in, values out. */

/**
 * After an operation that the present plan was signed for, or at which the newest examination was a visit; a visit that was begun
 * goes before all else.
 *
 * @param {import('../../planning/following.js').Followed[]} followed in the order in which they were done
 * @param {import('../patients/progress.js').Progress} progress
 * @param {string[]} drafts names
 * @returns {{to: string, isBegun: boolean} | null}
 */
export function toVisit(followed, progress, drafts) {
  const last = followed.at(-1);
  if (!last) return null;
  const { operation, visits } = last;
  const isBegun = drafts.includes(`follow-up/${operation.id}`);
  const isOperated = progress.state === 'signed' && progress.signature.id === operation.body.signature_id;
  const isVisit = progress.state === 'measured' && visits.some(({ body }) => body.examination_id === progress.examination.id);
  return isBegun || isOperated || isVisit ? { to: `/patients/${operation.patient}/visit/${operation.id}/new`, isBegun } : null;
}
