/**
 * Sends what waits in the outbox, in batches; the clinic's word on each record is stored in one transaction.
 *
 * Two batches are under way at once, so that neither the clinic nor this phone waits for the other; none holds a record that
 * mentions one of the other's, or is of the same patient, so the order that the outbox keeps is kept on the way. Answers are
 * stored one after the other. A round begins with small batches, which get through on a poor link, and sends more at once where the
 * link is quick: each batch costs the clinic and this phone something of its own.
 *
 * A batch that is refused as a whole (400, 413, 422) is halved until the record that it is refused for stands alone; that one is
 * set aside with the reason, and the others go on. Should the server refuse even a batch without records, the fault is in none of
 * them. That, and all else that is no answer (no network, 401, 403, 404, 426, 429, 5xx), is thrown: the outbox stays as it is.
 */
import { nextBatch, verdicts } from '../store/outbox.js';
import { FIRST_BATCH, nextBatchSize } from './pace.js';
import { sending } from './parcel.js';
import { reach } from './reach.js';

/** @typedef {import('../store/ledger.js').Ledger} Ledger */
/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('../store/outbox.js').Answer} Answer */
/** @typedef {{results: Answer[], wipe?: boolean, runs?: import('./reach.js').Run[]}} Told */
/**
 * @typedef {object} Pushed
 * @property {number} sent
 * @property {number} left  refused for now, to be tried again later
 * @property {boolean} wipe  this device was revoked
 * @property {boolean} caughtUp  the feed had nothing behind what was sent, so there is nothing to fetch
 */

const LANES = 2;
const NOT_AS_A_WHOLE = [400, 413, 422];

/**
 * Nothing is under way any more when it resolves or rejects.
 *
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @returns {Promise<Pushed>}
 */
export async function push(ledger, server) {
  const reached = reach((await ledger.place()).cursor);
  const post = (/** @type {object} */ body) => server.call('POST', `/api/v1/clinics/${ledger.clinic}/push`, { body: { device: ledger.device, ...body } });
  const send = sending(post);
  /** Patients with a record that was refused for now: what follows it waits for the next round. @type {Set<string>} */
  const held = new Set();
  /** @type {Set<string>} */
  const answered = new Set();
  /** @type {Map<Promise<unknown>, LedgerRecord[]>} */
  const underWay = new Map();
  let storing = Promise.resolve();
  let isOver = false;
  let left = 0;
  let wipe = false;

  /** @param {number} most */
  function take(most) {
    const entries = ledger.outbox.get().filter(({ id }) => !answered.has(id));
    return nextBatch(entries, ledger.find, { held, most, underWay: [...underWay.values()].flat() });
  }

  /** Takes batch after batch until nothing is left, or either lane found no answer. */
  async function lane() {
    let most = FIRST_BATCH;
    while (!isOver) {
      const batch = take(most);
      if (batch.length) {
        const work = deliver(batch).finally(() => underWay.delete(work));
        underWay.set(work, batch);
        const began = performance.now();
        const answered = await work;
        most = nextBatchSize(most, { sent: batch.length, took_ms: performance.now() - began, answered });
      } else if (underWay.size) await Promise.race(underWay.keys());
      else return;
    }
  }

  /**
   * @param {LedgerRecord[]} batch
   * @returns {Promise<boolean>}  whether there was an answer to each
   */
  async function deliver(batch) {
    const answer = await answerTo(batch).catch(error => {
      isOver = true;
      throw error;
    });
    if (!answer) return false;
    wipe ||= answer.wipe === true;
    storing = storing.then(() => store(batch, answer));
    await storing;
    return true;
  }

  /**
   * @param {LedgerRecord[]} batch
   * @returns {Promise<Told | null>}  null: too much or refused as a whole, to be tried in halves
   */
  async function answerTo(batch) {
    const seals = new Map(ledger.outbox.get().flatMap(({ id, carried }) => (carried ? [[id, carried.tag]] : [])));
    try {
      return await send(batch.map(record => bare(record, seals.get(record.id))));
    } catch (/** @type {any} */ error) {
      if (!NOT_AS_A_WHOLE.includes(error.status)) throw error;
      if (batch.length > 1) return null;
      const { wipe } = await post({ records: [] });
      const { code, text, field } = error;
      return { results: [{ id: batch[0].id, status: 'rejected', code, text, field, retryable: false }], wipe };
    }
  }

  /**
   * @param {LedgerRecord[]} batch
   * @param {Told} answer
   */
  async function store(batch, { results, runs = [] }) {
    const settled = verdicts(batch, results);
    if (!(await ledger.settle(settled, reached.join(runs)))) reached.lose();
    for (const [index, { id, to }] of settled.entries()) {
      if (to === 'sent') answered.add(id);
      if (to !== 'waiting') continue;
      left += 1;
      held.add(batch[index].patient);
    }
  }

  const lanes = await Promise.allSettled(Array.from({ length: LANES }, lane));
  for (const { reason } of /** @type {PromiseRejectedResult[]} */ (lanes.filter(({ status }) => status === 'rejected'))) throw reason;
  return { sent: answered.size, left, wipe, caughtUp: reached.isEnd() };
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
