/**
 * The last words of a revoked device: all that waits is sent, what the clinic refused is tried once more, then it says that this
 * was the last. After that the clinic takes nothing more, and the store has to go.
 */
import { push } from './push.js';

/**
 * @param {import('../store/ledger.js').Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @returns {Promise<number>}  how many records the clinic could not take for now: the last has not been said then
 */
export async function farewell(ledger, server) {
  for (const { id, state } of ledger.outbox.get()) if (state === 'attention') await ledger.retry(id);
  const { left } = await push(ledger, server);
  if (left) return left;
  await server.call('POST', `/api/v1/clinics/${ledger.clinic}/push`, { body: { device: ledger.device, records: [], last: true } });
  return 0;
}
