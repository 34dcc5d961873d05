import assert from 'node:assert/strict';
import { test } from 'node:test';
import { isTaken, sourceOf, takenOver } from '../../../static/app/screens/measure/rest/taking-over.js';

const previous = (/** @type {string} */ eye, mm = 5) => ({ eye, muscle: 'MR', operation: 'recess', mm, year: 2026 });
const earlier = (/** @type {any} */ one) => ({ previous: one, operated_on: '2026-11-25', limbus_mm: null, adjusted: false, text: '' });
const BY_HAND = { eye: 'left', muscle: 'LR', operation: 'unknown', mm: null, year: null };

test('what is missing is added and what was entered by hand stays', () => {
  const records = [earlier(previous('right')), earlier(previous('left'))];
  const taken = takenOver(records, [BY_HAND, previous('left')]);
  assert.deepEqual(taken, [BY_HAND, previous('left'), previous('right')]);
  assert.ok(records.every((each) => isTaken(each, taken)));
  assert.deepEqual(takenOver(records, taken), taken, 'a second touch adds nothing');
});

test('the same operation done twice stands twice', () => {
  assert.equal(takenOver([earlier(previous('right')), earlier(previous('right'))], []).length, 2);
});

test('a row says which record it comes from as long as it is unchanged', () => {
  const records = [earlier(previous('right'))];
  assert.equal(sourceOf(previous('right'), records), '2026-11-25');
  assert.equal(sourceOf(previous('right', 6), records), '');
});
