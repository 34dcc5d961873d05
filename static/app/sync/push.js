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
/** @typedef {{results: Answer[], wipe?: boolean, cursor?: string | null, more?: boolean}} Told */
/**
 * @typedef {object} Pushed
 * @property {number} sent
 * @property {number} left  refused for now, to be tried again later
 * @property {boolean} wipe  this device was revoked
 * @property {boolean} caughtUp  the feed had nothing behind what was sent, so there is nothing to fetch
 */

const MOST = 200;
const NOT_AS_A_WHOLE = [400, 413, 422];

/**
 * The next batch is on its way while the answers to the last are being stored, if that one was taken whole.
 *
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @returns {Promise<Pushed>}
 */
export async function push(ledger, server) {
  /** Patients with a record that was refused for now: what follows it waits for the next round. @type {Set<string>} */
  const held = new Set();
  /** @type {Set<string>} */
  const answered = new Set();
  let storing = Promise.resolve(false);
  let after = (await ledger.place()).cursor;
  let most = MOST;
  let sent = 0;
  let left = 0;
  let wipe = false;
  let more = true;
  try {
    for (;;) {
      const entries = ledger.outbox.get().filter(({ id }) => !answered.has(id));
      const batch = nextBatch(entries, ledger.find, { held, most });
      if (!batch.length) return { sent, left, wipe, caughtUp: (await storing) && !more };
      const answer = await answerTo(batch, after, ledger, server);
      if (answer === null) {
        most = Math.ceil(batch.length / 2);
        continue;
      }
      most = Math.min(MOST, most * 2);
      wipe ||= answer.wipe === true;
      more = answer.more !== false;
      const settled = verdicts(batch, answer.results);
      const step = answer.cursor ? { after, cursor: answer.cursor } : null;
      after = step?.cursor ?? after;
      await storing;
      storing = ledger.settle(settled, step);
      storing.catch(() => {}); // Awaited below in any case; until then the next answer may take its time.
      if (settled.some(({ to }) => to !== 'sent')) await storing;
      for (const [index, { id, to }] of settled.entries()) {
        if (to === 'sent') {
          sent += 1;
          answered.add(id);
        }
        if (to === 'waiting') {
          left += 1;
          held.add(batch[index].patient);
        }
      }
    }
  } finally {
    await storing;
  }
}

/**
 * @param {LedgerRecord[]} batch
 * @param {string} after  where this phone stands in the feed
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @returns {Promise<Told | null>}  null: too much or refused as a whole, to be tried in halves
 */
async function answerTo(batch, after, ledger, server) {
  const seals = new Map(ledger.outbox.get().map(({ id, carried }) => [id, carried?.tag]));
  const post = (/** @type {LedgerRecord[]} */ records) =>
    server.call('POST', `/api/v1/clinics/${ledger.clinic}/push`, {
      body: { device: ledger.device, after, records: records.map(record => bare(record, seals.get(record.id))) },
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
