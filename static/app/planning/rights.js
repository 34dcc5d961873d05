/**
 * What each role may write, so that a screen says it before the work instead of the clinic after it. The clinic has the last
 * word (clinic/sync/kinds); tests/static/planning/rights.test.js holds this list to it.
 */

/** @type {Record<string, string[]>} */
export const WRITERS = {
  examination: ['surgeon', 'clinic'],
  plan: ['surgeon', 'clinic'],
  signature: ['surgeon'],
};

/**
 * @param {string | undefined} role
 * @param {keyof typeof WRITERS} kind
 */
export const mayWrite = (role, kind) => role !== undefined && WRITERS[kind].includes(role);
