import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { clockOff_s, FIRST_BATCH, nextBatchSize, waitAfterFailure, waitAfterSuccess } from '../../../static/app/sync/pace.js';

test('waits double from two seconds to five minutes', () => {
  const waits_s = Array.from({ length: 10 }, (_, index) => waitAfterFailure(index + 1, { random: 1 }) / 1000);
  assert.deepEqual(waits_s, [2, 4, 8, 16, 32, 64, 128, 256, 300, 300]);
});

test('phones that failed together come back apart: within the upper half of the wait', () => {
  assert.equal(waitAfterFailure(4, { random: 0 }), 8_000);
  assert.equal(waitAfterFailure(4, { random: 0.5 }), 12_000);
});

test('a server that says how long to wait is obeyed', () => {
  assert.equal(waitAfterFailure(1, { random: 0, retryAfter_s: 90 }), 90_000);
});

test('batches grow while answers come quickly, to what the clinic takes at once', () => {
  const sizes = [FIRST_BATCH];
  for (let at = 0; at < 4; at += 1) sizes.push(nextBatchSize(sizes[at], { sent: sizes[at], took_ms: 300, answered: true }));
  assert.deepEqual(sizes, [100, 200, 400, 500, 500]);
});

test('the largest batch is as large as the clinic takes', () => {
  const protocol = readFileSync(new URL('../../../clinic/sync/protocol.py', import.meta.url), 'utf8');
  const [, most] = /^MOST_RECORDS: Final = (\d+)$/m.exec(protocol);
  assert.equal(nextBatchSize(10_000, { sent: 500, took_ms: 300, answered: true }), Number(most));
});

test('a slow answer halves the next batch, and one neither quick nor slow leaves it', () => {
  assert.deepEqual([5_000, 30_000].map(took_ms => nextBatchSize(400, { sent: 400, took_ms, answered: true })), [400, 200]);
});

test('what is refused as a whole is tried in halves of what was sent', () => {
  assert.deepEqual([7, 2, 1].map(sent => nextBatchSize(500, { sent, took_ms: 10, answered: false })), [4, 1, 1]);
});

test('after success the next look is in about a minute', () => {
  assert.deepEqual([0, 0.5, 1].map(random => Math.round(waitAfterSuccess(random) / 1000)), [48, 60, 72]);
});

test('a clock is off from two minutes on, in its direction', () => {
  const heard = { serverTime: '2026-11-25T10:00:00Z', sentAt: 0, receivedAt: 0 };
  const at = seconds => {
    const now = Date.parse(heard.serverTime) + seconds * 1000;
    return clockOff_s({ ...heard, sentAt: now - 500, receivedAt: now + 500 });
  };
  assert.deepEqual([0, 120, -120, 121, -121, 7200].map(at), [null, null, null, 121, -121, 7200]);
});

test('a slow call is no wrong clock', () => {
  const sentAt = Date.parse('2026-11-25T10:00:00Z');
  assert.equal(clockOff_s({ serverTime: '2026-11-25T10:01:30Z', sentAt, receivedAt: sentAt + 200_000 }), null);
});
