/**
 * A batch on its way as a parcel: without the digests of its records, under one digest of them all. Digests cannot be compressed,
 * and are a tenth of what a phone sends. Where the clinic does not open a parcel the same records go with their digests, and each is
 * answered for itself (`clinic/sync/protocol.py`).
 */
import { ServerFault, unreachable } from '../session/server.js';
import { sha256 } from '../store/canonical.js';

/** @typedef {import('./push.js').Told} Told */

/** What a server says that knows no parcels. */
const UNKNOWN = 'records_missing';

/**
 * @param {(body: object) => Promise<any>} post
 * @returns {(records: any[]) => Promise<Told>}  the answer, with the id in each result
 */
export function sending(post) {
  let isKnown = true;
  return async records => {
    if (!isKnown) return post({ records });
    const digest = await sha256(records.map(record => record.digest).join(''));
    try {
      return named(await post({ parcel: { digest, records: records.map(undigested) } }), digest, records);
    } catch (error) {
      if (!(error instanceof ServerFault) || error.status !== 400) throw error;
      isKnown = error.code !== UNKNOWN;
      return post({ records });
    }
  };
}

/** @param {any} record */
function undigested({ digest: _digest, ...record }) {
  return record;
}

/**
 * An answer that is not to this very parcel is none.
 *
 * @param {any} answer
 * @param {string} digest
 * @param {{id: string}[]} records
 * @returns {Told}
 */
function named(answer, digest, records) {
  if (answer.parcel !== digest || answer.results.length !== records.length) throw unreachable();
  return { ...answer, results: records.map(({ id }, place) => ({ ...answer.results[place], id })) };
}
