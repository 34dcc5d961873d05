import assert from 'node:assert/strict';
import { test } from 'node:test';
import { setUpQuestion, setUpsOf, withOverride, NOTHING_WISHED } from '../../../static/app/preparing/set-ups.js';

const plan = { id: 'p', kind: 'plan', patient: 'a', digest: 'd', supersedes: [], body: { of: 'plan' } };
const setUp = (id, body, supersedes = []) => ({ id, kind: 'set_up', patient: 'a', supersedes, body: { plan_id: 'p', plan_digest: 'd', ...body } });

test('only a set-up of this very plan counts, and the newest stands first', () => {
  const records = [plan, setUp('1', {}), setUp('2', { plan_digest: 'other' }), setUp('3', { plan_id: 'q' }), setUp('4', {}, ['1'])];

  assert.deepEqual(setUpsOf(records, plan).map(({ id }) => id), ['4']);
  assert.deepEqual(setUpsOf([...records, setUp('5', {}, ['1'])], plan).map(({ id }) => id), ['5', '4']);
});

test('a choice takes the place of the one for the same item, and can be taken back', () => {
  const one = { item: 'needle', choice: 'spatula_half', reason: 'deep tissue' };
  const other = { item: 'suture', choice: 'staying', reason: 'a tuck' };

  assert.deepEqual(withOverride([one, other], 'needle', { ...one, reason: 'no room' }), [other, { ...one, reason: 'no room' }]);
  assert.deepEqual(withOverride([one, other], 'needle', null), [other]);
});

test('an unsigned plan and a clinic without a practice are asked with null', () => {
  const question = setUpQuestion({ patient: { body: 1 }, plan }, { on: '2026-12-01', wishes: NOTHING_WISHED, overrides: [] }, null);

  assert.deepEqual([question.signature, question.practice], [null, null]);
});
