import assert from 'node:assert/strict';
import { test } from 'node:test';
import { sizeWords } from '../../../static/app/screens/status/size-words.js';

test('sizes are told in decimal units', () => {
  assert.deepEqual([340_000, 15_400_000, 2_140_000_000].map(sizeWords), ['340 kB', '15 MB', '2.1 GB']);
});
