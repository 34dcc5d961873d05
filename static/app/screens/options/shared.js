/**
 * What all options have in common, so that it is said once and what differs stands out. A sentence is the same when code
 * and text are; nothing is judged here.
 */

/** @typedef {{code: string, text: string, level?: string, provenance: any}} Statement */
/** @typedef {{reasons_for: Statement[], reasons_against: Statement[], notices: Statement[]}} Option */
/** @typedef {{reasons: Statement[], notices: any[], has: (statement: Statement) => boolean}} Shared */

/** @type {Shared} */
export const NOTHING_SHARED = { reasons: [], notices: [], has: () => false };

/** @param {Statement} statement */
const keyOf = ({ code, text, level = '' }) => `${level} ${code} ${text}`;

/**
 * @param {Option[]} options
 * @returns {Shared}
 */
export function shared(options) {
  /** @param {'reasons_for' | 'reasons_against' | 'notices'} field */
  const inAll = (field) => {
    if (options.length < 2) return [];
    const [first, ...others] = options;
    return first[field].filter((statement) => others.every((option) => option[field].some((other) => keyOf(other) === keyOf(statement))));
  };
  const reasons = [...inAll('reasons_for'), ...inAll('reasons_against')];
  const notices = inAll('notices');
  const keys = new Set([...reasons, ...notices].map(keyOf));
  return { reasons, notices, has: (statement) => keys.has(keyOf(statement)) };
}
