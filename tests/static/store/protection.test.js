import assert from 'node:assert/strict';
import { test } from 'node:test';
import { isNearlyFull } from '../../../static/app/store/protection.js';

test('storage is nearly full below a twentieth or 20 MB of room, and never where the browser does not say', () => {
  for (const [usage, quota, nearly] of [
    [0, 1e9, false],
    [949e6, 1e9, false],
    [951e6, 1e9, true],
    [79e6, 100e6, false],
    [81e6, 100e6, true],
    [1e9, 1e9, true],
    [null, null, false],
    [5, null, false],
    [0, 0, false],
  ]) assert.equal(isNearlyFull({ usage, quota }), nearly, `${usage} of ${quota}`);
});
