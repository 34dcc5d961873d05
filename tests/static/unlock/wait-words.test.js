import assert from 'node:assert/strict';
import { test } from 'node:test';
import { waitWords } from '../../../static/app/screens/unlock/wait-words.js';

test('a wait is told in seconds, then in minutes rounded up', () => {
  assert.deepEqual([1, 2, 89, 90, 120, 121].map(waitWords), ['1 second', '2 seconds', '89 seconds', '2 minutes', '2 minutes', '3 minutes']);
});
