import assert from 'node:assert/strict';
import { test } from 'node:test';
import { fieldWords } from '../../../static/app/words/field.js';

test('a fault’s path is told by its last named step', () => {
  assert.equal(fieldWords('born_on'), 'Birth date');
  assert.equal(fieldWords('body.born_on'), 'Birth date');
  assert.equal(fieldWords('readings.0.horizontal_pd'), '');
  assert.equal(fieldWords(''), '');
});
