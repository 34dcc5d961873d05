import assert from 'node:assert/strict';
import { test } from 'node:test';
import { uuid7 } from '../../../static/app/store/uuid7.js';

test('an id has the layout of RFC 9562 and carries its millisecond', () => {
  const now = Date.now() + 1_000_000;
  const id = uuid7(now);
  assert.match(id, /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  assert.equal(parseInt(id.slice(0, 13).replace('-', ''), 16), now);
});

test('twenty thousand ids of one millisecond are different and in order', () => {
  const now = Date.now() + 2_000_000;
  const ids = Array.from({ length: 20_000 }, () => uuid7(now));
  assert.deepEqual([...ids].sort(), ids);
  assert.equal(new Set(ids).size, ids.length);
});

test('a clock that steps back makes no id that sorts before an earlier one', () => {
  const now = Date.now() + 3_000_000;
  const before = uuid7(now);
  assert.ok(uuid7(now - 3_600_000) > before);
});
