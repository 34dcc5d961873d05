import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { workOf } from '../../../static/app/screens/card/works.js';

const line = { eye: 'left', muscle: 'LR', operation: 'recess', mm: 7 };
const source = (path) => readFileSync(new URL(`../../../planner/${path}.py`, import.meta.url), 'utf8');

test('the picture on the card shows where a tendon is moved to, as the words beside it say', () => {
  assert.equal(workOf({ ...line, offset_words: 'moved up by half a tendon width (5 mm)' }).offset, 'up');
  assert.equal(workOf({ ...line, offset_words: 'moved down by a full tendon width (10 mm)' }).offset, 'down');
  assert.equal(workOf({ ...line, offset_words: '' }).offset, null);
  assert.equal(workOf(line).offset, null);
});

test('the engine words an offset as the picture reads it', () => {
  assert.match(source('card/lines'), /f"moved \{dose\.offset\.words\}"/);
  assert.match(source('values/option'), /return f"\{self\.direction\} by /);
});
