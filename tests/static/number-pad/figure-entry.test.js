import assert from 'node:assert/strict';
import { test } from 'node:test';
import { figureEntry, figureTaken, figureTouched } from '../../../static/app/parts/number-pad/figure-entry.js';

const MM = { low: 0.5, high: 20, decimals: 1, unit: 'mm' };
const YEAR = { low: 1900, high: 2200, decimals: 0, unit: '' };
const typed = (text, range, from = null) => [...text].reduce((entry, key) => figureTouched(entry, key, range), figureEntry(from));

test('typing over a figure replaces it, then adds to it', () => {
  assert.equal(figureTaken(typed('6.5', MM, 5), MM).value, 6.5);
  assert.equal(figureTaken(typed('2019', YEAR), YEAR).value, 2019);
});

test('a figure too large is refused while typing, one too small when taken, each with the range', () => {
  const large = typed('21', MM);
  assert.equal(figureTaken(large, MM).value, 2);
  assert.match(large.refusal, /0\.5 to 20 mm/);
  assert.deepEqual(figureTaken(typed('0', MM), MM), { value: null, refusal: 'Too small. Allowed: 0.5 to 20 mm.' });
});

test('a year has no decimals', () => {
  const entry = typed('20.', YEAR);
  assert.equal(figureTaken(entry, { ...YEAR, low: 0 }).value, 20);
  assert.notEqual(entry.refusal, '');
});

test('no figure is no figure', () => {
  assert.deepEqual(figureTaken(figureEntry(null), MM), { value: null, refusal: '' });
});
