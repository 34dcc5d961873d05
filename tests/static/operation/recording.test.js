import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as it from '../../../static/app/screens/operation/recording.js';

const work = (/** @type {number} */ mm) => ({ operation: 'recess', mm, offset: null });
const muscle = (/** @type {string} */ eye) => ({
  eye, muscle: 'MR', planned: work(5), done: work(5), reason: '', insertion_mm: null, limbus_mm: null, duction_before: null,
  duction_after: null, scarring: null, state: 'in place', suture: null, gauge: null, needle: null, adjustable: false,
});
const begun = () => it.begun(/** @type {any} */ ({ muscles: [muscle('right'), muscle('left')], complications: [], tied_at: null, block_at: null, window: null, note: '' }));

test('what the engine filled in counts only once the surgeon has spoken', () => {
  const recording = begun();
  assert.deepEqual(recording.said, []);
  const next = it.asPlanned(recording, 'right MR');
  assert.deepEqual([next.said, next.stage], [['right MR'], 'left MR']);
});

test('something else is said before it counts, and needs millimetres and a reason', () => {
  const opened = it.differently(it.asPlanned(begun(), 'right MR'), 'right MR');
  assert.deepEqual(opened.said, []);
  const said = (/** @type {any} */ fields) => it.lacking(/** @type {any} */ (it.muscleOf(it.tellMuscle(opened, 'right MR', fields), 'right MR')));
  assert.match(said({ done: { ...work(5), mm: null } }), /millimetres/);
  assert.match(said({ done: work(4) }), /why/);
  assert.match(said({ done: work(4), reason: '  a ' }), /why/);
  assert.equal(said({ done: work(4), reason: 'tight' }), undefined);
  assert.equal(said({}), undefined);
});

test('done as planned after all takes the change and its reason back', () => {
  const changed = it.tellMuscle(it.differently(begun(), 'right MR'), 'right MR', { done: work(4), reason: 'tight' });
  const back = it.muscleOf(it.asPlanned(changed, 'right MR'), 'right MR');
  assert.deepEqual([back?.done, back?.reason], [work(5), '']);
});

test('with the last adjustable suture its times go too', () => {
  const tied = it.told(it.tellMuscle(begun(), 'left MR', { adjustable: true }), { tied_at: 'then', block_at: 'before', window: {} });
  assert.equal(it.tellMuscle(tied, 'right MR', { scarring: 1 }).body.tied_at, 'then');
  const fixed = it.tellMuscle(tied, 'left MR', { adjustable: false }).body;
  assert.deepEqual([fixed.tied_at, fixed.block_at, fixed.window], [null, null, null]);
});

test('the wait after a block stays as the engine filled it in, and as a saved record has it', () => {
  const filled = it.begun(/** @type {any} */ ({ ...begun().body, block_wait_h: 12 }));
  const told = it.tellMuscle(it.tellMuscle(filled, 'left MR', { adjustable: true }), 'left MR', { adjustable: false });
  assert.equal(it.bodyOf(told).block_wait_h, 12);
  assert.equal(it.bodyOf(it.resumed(it.bodyOf(told))).block_wait_h, 12);
  assert.equal('block_wait_h' in it.bodyOf(it.resumed(begun().body)), false, 'an older record is corrected in its own form');
});

test('an added muscle is not in the plan, and can be taken out again', () => {
  const more = it.withMuscle(begun(), 'left', 'IO');
  assert.deepEqual(it.muscleOf(more, 'left IO')?.planned, null);
  assert.equal(more.stage, 'left IO');
  assert.equal(it.withoutMuscle(more, 'left IO').body.muscles.length, 2);
  assert.equal(it.withMuscle(begun(), 'left', 'MR').body.muscles.length, 2, 'one that is there is only opened');
});

test('suture and needle are offered as on the muscle before', () => {
  assert.equal(it.usedBefore(begun(), 'left MR'), null);
  const used = it.tellMuscle(begun(), 'right MR', { suture: 'silk, non-absorbable', needle: 'spatulated' });
  assert.deepEqual(it.usedBefore(used, 'left MR'), { suture: 'silk, non-absorbable', gauge: null, needle: 'spatulated' });
  assert.equal(it.usedBefore(used, 'right MR'), null);
});

test('the body carries no white space around its texts', () => {
  const body = it.bodyOf(it.told(it.tellMuscle(begun(), 'right MR', { reason: ' tight ' }), { note: ' calm\n', complications: [{ complication: 'other', eye: null, muscle: null, note: ' x ', answer: ' y' }] }));
  assert.deepEqual([body.muscles[0].reason, body.note, body.complications[0].note, body.complications[0].answer], ['tight', 'calm', 'x', 'y']);
});

test('a saved record opens at its check, every muscle spoken of', () => {
  const again = it.resumed(begun().body);
  assert.deepEqual([again.said, again.stage], [['right MR', 'left MR'], it.CHECK]);
});
