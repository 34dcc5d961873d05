import assert from 'node:assert/strict';
import { test } from 'node:test';
import { figureEntry, figurePointed, figureTaken, figureTouched } from '../../../static/app/parts/number-pad/figure-entry.js';

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

const DEGREES = { low: -40, high: 40, decimals: 1, unit: '°', signs: { plus: 'excyclo', minus: 'incyclo' } };

test('a figure with two directions needs its word, none needs none', () => {
  const six = typed('6', DEGREES);
  assert.match(figureTaken(six, DEGREES).refusal, /excyclo or incyclo/);
  assert.equal(figureTaken(figurePointed(six, 'minus'), DEGREES).value, -6);
  assert.equal(figureTaken(typed('0', DEGREES), DEGREES).value, 0);
});

test('a signed figure opens with its direction, and the same direction again takes it back', () => {
  const entry = figureEntry(-6);
  assert.equal(figureTaken(entry, DEGREES).value, -6);
  assert.equal(figurePointed(entry, 'minus').sign, null);
});
