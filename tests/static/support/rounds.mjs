import assert from 'node:assert/strict';
import { drain } from '../../../static/app/sync/drain.js';

export const noLocks = { locks: null };
export const names = ledger => ledger.records.get().filter(({ kind }) => kind === 'patient').map(({ body }) => body.full_name).sort();
export const ids = records => records.map(({ id }) => id).sort();

/** Rounds until everything is through, as the timer would do. */
export async function untilDone(ledger, server, most = 50) {
  for (let round = 0; round < most; round += 1) {
    const { end } = await drain(ledger, server, noLocks);
    if (end === 'done') return round + 1;
    assert.equal(end, 'later');
  }
  return assert.fail(`not through after ${most} rounds`);
}
