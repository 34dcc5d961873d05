/** The clinic's own practice in theatre, as it stands. */
import { things } from '../store/heads.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */

/**
 * There is one practice; where two stand side by side the newest counts until a person has chosen.
 *
 * @param {readonly LedgerRecord[]} records
 * @returns {{current: LedgerRecord | null, versions: LedgerRecord[]}}
 */
export function practiceOf(records) {
  const versions = things(records, 'practice').flatMap(({ heads }) => heads);
  return { current: versions[0] ?? null, versions };
}
