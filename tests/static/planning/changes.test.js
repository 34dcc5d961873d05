import assert from 'node:assert/strict';
import { test } from 'node:test';
import { stepped, withChange, withoutChange, withoutOption } from '../../../static/app/planning/changes.js';

const LIMITS = { low: 0.5, high: 20 };
const change = (option, muscle, mm) => ({ option, eye: 'right', muscle, mm });

test('a step is half a millimetre', () => {
  assert.equal(stepped(5.5, 1, LIMITS), 6);
  assert.equal(stepped(5.5, -1, LIMITS), 5);
});

test('a figure between two halves goes to the nearer end first', () => {
  assert.equal(stepped(5.3, 1, LIMITS), 5.5);
  assert.equal(stepped(5.3, -1, LIMITS), 5);
});

test('steps end at the limits', () => {
  assert.equal(stepped(0.5, -1, LIMITS), 0.5);
  assert.equal(stepped(20, 1, LIMITS), 20);
});

test('a muscle of an option has one figure, the last one', () => {
  const changes = withChange(withChange([], change('a', 'MR', 5)), change('a', 'MR', 6));
  assert.deepEqual(changes, [change('a', 'MR', 6)]);
});

test('the order of changing leaves no trace', () => {
  const [one, other] = [change('a', 'MR', 5), change('b', 'LR', 6)];
  assert.deepEqual(withChange(withChange([], one), other), withChange(withChange([], other), one));
});

test('back to the table takes out one muscle or a whole option, and leaves the others', () => {
  const changes = [change('a', 'LR', 6), change('a', 'MR', 5), change('b', 'MR', 4)];
  assert.deepEqual(withoutChange(changes, { option: 'a', eye: 'right', muscle: 'MR' }), [changes[0], changes[2]]);
  assert.deepEqual(withoutOption(changes, 'a'), [changes[2]]);
});
