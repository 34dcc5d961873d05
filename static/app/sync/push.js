/**
 * Sends what waits in the outbox, in batches; the clinic's word on each record is stored in one transaction.
 *
 * A batch that is refused as a whole (400, 413, 422) is halved until the record that it is refused for stands alone; that one is
 * set aside with the reason, and the others go on. Should the server refuse even a batch without records, the fault is in none of
 * them. That, and all else that is no answer (no network, 401, 403, 404, 426, 429, 5xx), is thrown: the outbox stays as it is.
 */
import { nextBatch, verdicts } from '../store/outbox.js';

/** @typedef {import('../store/ledger.js').Ledger} Ledger */
/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('../store/outbox.js').Answer} Answer */

const MOST = 200;
const NOT_AS_A_WHOLE = [400, 413, 422];

/**
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @returns {Promise<{sent: number, left: number, wipe: boolean}>}  `left`: refused for now, to be tried again later; `wipe`: this
 *   device was revoked
 */
export async function push(ledger, server) {
  /** Patients with a record that was refused for now: what follows it waits for the next round. @type {Set<string>} */
  const held = new Set();
  let most = MOST;
  let sent = 0;
  let left = 0;
  let wipe = false;
  for (;;) {
    const batch = nextBatch([...ledger.outbox.get()], ledger.find, { held, most });
    if (!batch.length) return { sent, left, wipe };
    const answer = await answerTo(batch, ledger, server);
    if (answer === null) {
      most = Math.ceil(batch.length / 2);
      continue;
    }
    most = Math.min(MOST, most * 2);
    wipe ||= answer.wipe === true;
    const settled = verdicts(batch, answer.results);
    await ledger.settle(settled);
    for (const [index, { to }] of settled.entries()) {
      if (to === 'sent') sent += 1;
      if (to === 'waiting') {
        left += 1;
        held.add(batch[index].patient);
      }
    }
  }
}

/**
 * @param {LedgerRecord[]} batch
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @returns {Promise<{results: Answer[], wipe?: boolean} | null>}  null: too much or refused as a whole, to be tried in halves
 */
async function answerTo(batch, ledger, server) {
  const seals = new Map(ledger.outbox.get().map(({ id, carried }) => [id, carried?.tag]));
  const post = (/** @type {LedgerRecord[]} */ records) =>
    server.call('POST', `/api/v1/clinics/${ledger.clinic}/push`, {
      body: { device: ledger.device, records: records.map(record => bare(record, seals.get(record.id))) },
    });
  try {
    return await post(batch);
  } catch (/** @type {any} */ error) {
    if (!NOT_AS_A_WHOLE.includes(error.status)) throw error;
    if (batch.length > 1) return null;
    const { wipe } = await post([]);
    const { code, text, field } = error;
    return { results: [{ id: batch[0].id, status: 'rejected', code, text, field, retryable: false }], wipe };
  }
}

/**
 * The record without what the server adds to it, but for its receipt, and with the seal of the device that made it, where this one
 * only carries it.
 *
 * @param {LedgerRecord} record
 * @param {string} [seal]
 */
function bare({ position: _position, received_at: _received, receipt, ...record }, seal) {
  return { ...record, ...(receipt && { receipt }), ...(seal && { seal }) };
}
