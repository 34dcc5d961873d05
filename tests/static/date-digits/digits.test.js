import assert from 'node:assert/strict';
import { test } from 'node:test';
import { digitsOf, isoOf } from '../../../static/app/parts/date-digits/digits.js';

test('single digits are filled up, so that a finished date is a calendar date', () => {
  assert.equal(isoOf({ day: '4', month: '3', year: '2019' }), '2019-03-04');
  assert.equal(isoOf({ day: '04', month: '12', year: '2019' }), '2019-12-04');
});

test('nothing typed is an empty text, and an unfinished date is no date', () => {
  assert.equal(isoOf({ day: '', month: '', year: '' }), '');
  assert.equal(isoOf({ day: '4', month: '', year: '' }), '--04');
});

test('what was typed comes back from a draft, finished or not', () => {
  for (const typed of [
    { day: '4', month: '3', year: '2019' },
    { day: '', month: '3', year: '2019' },
    { day: '31', month: '', year: '' },
    { day: '', month: '', year: '' },
    { day: '0', month: '', year: '20' },
  ]) {
    assert.equal(isoOf(digitsOf(isoOf(typed))), isoOf(typed), JSON.stringify(typed));
  }
  assert.deepEqual(digitsOf('2019-03-04'), { day: '4', month: '3', year: '2019' });
});
