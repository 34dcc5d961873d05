import assert from 'node:assert/strict';
import { test } from 'node:test';
import { afterLast, daysWords, typedDay } from '../../../static/app/screens/practice/visit-days.js';

const visit = (/** @type {number} */ first_day, /** @type {number} */ last_day) => ({ name: 'Week 1', first_day, last_day });

test('one day is said once, several with the first and the last', () => {
  assert.deepEqual([daysWords(visit(1, 1)), daysWords(visit(5, 10))], ['day 1', 'day 5 to 10']);
});

test('what is no day is 0, which the engine refuses with what is allowed', () => {
  assert.deepEqual(['', '7', '7.9', '-3', 'x'].map(typedDay), [0, 7, 7, -3, 0]);
});

test('a visit that is added lies after all others and waits for its name', () => {
  const added = afterLast([visit(42, 56), visit(1, 2)]);
  assert.equal(added.name, '');
  assert.ok(added.first_day > 56 && added.last_day > added.first_day);
});
