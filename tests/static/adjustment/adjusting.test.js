import assert from 'node:assert/strict';
import { test } from 'node:test';
import { NOTHING_SAID, bodyOf, isMoved, lacking } from '../../../static/app/screens/adjustment/adjusting.js';

const done = { operation: 'recess', mm: 5, offset: null };
const OPERATION = {
  id: 'an-id',
  digest: 'a-digest',
  body: { muscles: [{ eye: 'right', muscle: 'MR', done, adjustable: true }, { eye: 'left', muscle: 'MR', done, adjustable: false }] },
};
const BEFORE = { distance: { horizontal_pd: 4, vertical_pd: null } };

test('it asks for the time, the deviation before, and by how much', () => {
  assert.match(String(lacking(NOTHING_SAID)), /When/);
  assert.match(String(lacking({ ...NOTHING_SAID, adjusted_at: 'then' })), /before/);
  const said = { ...NOTHING_SAID, adjusted_at: 'then', before: BEFORE };
  assert.equal(lacking(said), undefined);
  assert.match(String(lacking({ ...said, moved: { 'right MR': { way: 'loosen', mm: null, limbus_mm: null } } })), /millimetres/);
});

test('a suture that was left as it was is not in the record, nor one that is fixed', () => {
  const moved = { 'right MR': { way: null, mm: null, limbus_mm: null }, 'left MR': { way: /** @type {const} */ ('loosen'), mm: 1, limbus_mm: null } };
  const body = bodyOf({ ...NOTHING_SAID, adjusted_at: 'then', before: BEFORE, moved }, OPERATION, 'Dr Mira Example');
  assert.deepEqual(body.moved, []);
  assert.deepEqual(body.before, [{ range: 'distance', horizontal_pd: 4, vertical_pd: null }]);
  assert.deepEqual([body.operation_id, body.operation_digest], ['an-id', 'a-digest']);
});

test('moved is said of any suture that has a way', () => {
  assert.equal(isMoved(NOTHING_SAID), false);
  assert.equal(isMoved({ ...NOTHING_SAID, moved: { 'right MR': { way: 'tighten', mm: 1, limbus_mm: null } } }), true);
});
