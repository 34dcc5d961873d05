/**
 * The two keys that this phone and the clinic share: the one that it seals with what it hands over, and the clinic's half of the way
 * back for a forgotten secret. Seen to after a round of sync; what fails is tried again after the next.
 */

/**
 * @param {import('../store/ledger.js').Ledger} ledger  open
 * @param {import('./server.js').Server} server
 */
export async function shareKeys(ledger, server) {
  const due = await ledger.recoveryDue();
  if (due) {
    const kept = await server.call('PUT', recoveryPath(ledger), { body: { device: ledger.device, ...due } });
    await ledger.recoveryDelivered(kept.key_id);
  }
  if (!(await ledger.hasCarryingKey())) await ledger.keepCarryingKey((await server.call('GET', '/api/v1/carrying')).key);
}

/**
 * @param {import('../store/ledger.js').Ledger} ledger
 * @param {import('./server.js').Server} server
 * @returns {Promise<import('../store/recovery.js').Half>}  only right after a sign-in on this phone
 */
export function fetchHalf(ledger, server) {
  return server.call('GET', `${recoveryPath(ledger)}?${new URLSearchParams({ device: ledger.device })}`);
}

/** @param {import('../store/ledger.js').Ledger} ledger */
function recoveryPath({ clinic }) {
  return `/api/v1/clinics/${clinic}/recovery`;
}
