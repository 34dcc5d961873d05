/** What the engine plans from: the saved examination, the table and what the surgeon has set. */

/** @typedef {{option: string, eye: string, muscle: string, mm: number}} Change */

/**
 * What is as usual is left out, so that a plain case is the same text as ever.
 *
 * @param {object} facts
 * @param {any} facts.examination body of the examination record, as it was saved
 * @param {string} facts.table id
 * @param {string} facts.born_on
 * @param {Change[]} facts.changes
 * @param {string} [facts.aim] which reading of the primary position the plan answers
 * @param {number} [facts.overcorrection_pd] the early overcorrection that the surgeon wants
 * @param {string[]} [facts.combine] ids of options to be done at one sitting
 * @param {object | null} [facts.clinic_table] body of the clinic's own table, when `table` names it
 */
export const caseOf = ({ examination, table, born_on, changes, aim = 'distance', overcorrection_pd = 0, combine = [], clinic_table = null }) => ({
  schema: 1,
  examination,
  table,
  born_on,
  changes,
  ...(aim === 'distance' ? {} : { aim }),
  ...(overcorrection_pd === 0 ? {} : { overcorrection_pd }),
  ...(combine.length === 0 ? {} : { combine }),
  ...(clinic_table ? { clinic_table } : {}),
});
