/** What the engine plans from: the saved examination, the table and the surgeon's own figures. */

/** @typedef {{option: string, eye: string, muscle: string, mm: number}} Change */

/**
 * @param {object} facts
 * @param {any} facts.examination body of the examination record, as it was saved
 * @param {string} facts.table id
 * @param {string} facts.born_on
 * @param {Change[]} facts.changes
 */
export const caseOf = ({ examination, table, born_on, changes }) => ({ schema: 1, examination, table, born_on, changes });
