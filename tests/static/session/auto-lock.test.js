import assert from 'node:assert/strict';
import { test } from 'node:test';
import { isIdle } from '../../../static/app/session/auto-lock.js';

test('a phone is idle when the whole time has passed without a touch', () => {
  assert.equal(isIdle(599_999, 0, 10), false);
  assert.equal(isIdle(600_000, 0, 10), true);
});
