import assert from 'node:assert/strict';
import { test } from 'node:test';
import { entryOf, limitationWords, withEntry } from '../../../static/app/parts/duction-pad/ductions.js';

test('a muscle has one duction, which can be taken out, and the order of touching leaves no trace', () => {
  const left = { eye: 'left', muscle: 'MR' };
  const right = { eye: 'right', muscle: 'LR' };
  const one = withEntry(withEntry([], left, { grade: -1 }), right, { grade: -3 });
  assert.deepEqual(one, withEntry(withEntry([], right, { grade: -3 }), left, { grade: -1 }));
  assert.equal(entryOf(withEntry(one, right, { grade: 0 }), right).grade, 0);
  assert.deepEqual(withEntry(one, right, null), [{ ...left, grade: -1 }]);
});

test('a full movement is a word, a limitation a grade', () => {
  assert.deepEqual([limitationWords(0), limitationWords(-2)], ['full', '\u22122']);
});
