/**
 * What each role may write, so that a screen says it before the work instead of the clinic after it. The clinic has the last
 * word (clinic/sync/kinds); tests/static/planning/rights.test.js holds this list to it.
 */

/** @type {Record<string, string[]>} */
export const WRITERS = {
  patient: ['surgeon', 'clinic', 'coordinator'],
  examination: ['surgeon', 'clinic'],
  plan: ['surgeon', 'clinic'],
  signature: ['surgeon'],
  retraction: ['surgeon', 'clinic', 'coordinator'],
  dose_table: ['surgeon'],
  join: ['surgeon', 'clinic', 'coordinator'],
  theatre_check: ['surgeon', 'clinic', 'theatre'],
  check_item: ['surgeon'],
  practice: ['surgeon'],
  set_up: ['surgeon'],
  operating_list: ['surgeon', 'coordinator'],
  operation: ['surgeon'],
  adjustment: ['surgeon'],
  follow_up: ['surgeon', 'clinic'],
  notebook: ['surgeon'],
  own_results: ['surgeon'],
};

/**
 * @param {string | undefined} role
 * @param {keyof typeof WRITERS} kind
 */
export const mayWrite = (role, kind) => role !== undefined && WRITERS[kind].includes(role);

/**
 * Taking a record back asks for the right to write its kind too.
 * @param {string | undefined} role
 * @param {string} kind
 */
export const mayTakeBack = (role, kind) => mayWrite(role, 'retraction') && mayWrite(role, kind);
