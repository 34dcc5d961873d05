import assert from 'node:assert/strict';
import { test } from 'node:test';
import { afterFailure, checkSecret, NO_ATTEMPTS, stillToWait } from '../../../static/app/store/secret.js';

for (const secret of ['482915', '90210347', 'ten letter', 'почтовый ящик']) {
  test(`"${secret}" will do`, () => checkSecret(secret));
}

for (const [secret, code] of [
  ['', 'secret_too_short'],
  ['48291', 'secret_too_short'],
  ['short pass', null],
  ['shortpass', 'secret_too_short'],
  ['111111', 'secret_too_simple'],
  ['123456', 'secret_too_simple'],
  ['987654', 'secret_too_simple'],
  ['x'.repeat(201), 'secret_too_long'],
].filter(([, code]) => code)) {
  test(`"${secret.slice(0, 12)}" is refused as ${code}, with what is allowed`, () => {
    assert.throws(() => checkSecret(secret), fault => fault.code === code && fault.field === 'secret' && /6 digits/.test(fault.allowed));
  });
}

test('the first two wrong secrets cost nothing, then each costs more, up to an hour', () => {
  let attempts = NO_ATTEMPTS;
  const waits = Array.from({ length: 10 }, () => {
    attempts = afterFailure(attempts, 1_000_000);
    return stillToWait(attempts, 1_000_000) / 1000;
  });
  assert.deepEqual(waits, [0, 0, 5, 15, 60, 300, 900, 3600, 3600, 3600]);
});

test('a clock that was set back does not lock for longer than the longest wait', () => {
  assert.equal(stillToWait({ failed: 9, notBefore: Date.UTC(2040, 0) }, Date.UTC(2026, 10)), 3_600_000);
});
