import assert from 'node:assert/strict';
import { test } from 'node:test';
import { begin, look, step, undo } from '../../../static/app/screens/measure/undo.js';

test('undo takes back the last step, then the one before, then nothing', () => {
  const timeline = step(step(begin('a'), 'b'), 'c');
  assert.equal(undo(timeline).now, 'b');
  assert.equal(undo(undo(timeline)).now, 'a');
  assert.equal(undo(undo(undo(timeline))).now, 'a');
});

test('looking elsewhere is no step', () => {
  const timeline = look(step(begin('a'), 'b'), 'elsewhere');
  assert.deepEqual([timeline.now, undo(timeline).now], ['elsewhere', 'a']);
});

test('a touch that changed nothing is no step', () => {
  const timeline = begin('a');
  assert.equal(step(timeline, 'a'), timeline);
});

test('the past is bounded', () => {
  let timeline = begin(0);
  for (let now = 1; now <= 500; now += 1) timeline = step(timeline, now);
  assert.ok(timeline.past.length <= 60);
  assert.equal(undo(timeline).now, 499);
});
