import assert from 'node:assert/strict';
import { test } from 'node:test';
import { reach } from '../../../static/app/sync/reach.js';

const run = (after, cursor, more = true) => ({ after, cursor, more });

test('a run that begins where the phone stands is a step', () => {
  const reached = reach('0');
  assert.deepEqual(reached.join([run('0', '3', false)]), { after: '0', cursor: '3' });
  assert.equal(reached.isEnd(), true);
});

test('a run that begins elsewhere waits until what lies before it has come', () => {
  const reached = reach('0');
  assert.equal(reached.join([run('3', '5', false)]), null);
  assert.equal(reached.isEnd(), false);
  assert.deepEqual(reached.join([run('0', '3')]), { after: '0', cursor: '5' });
  assert.equal(reached.isEnd(), true);
});

test('the feed goes on behind the last run, though an earlier answer had not known', () => {
  const reached = reach('0');
  reached.join([run('0', '2', false)]);
  reached.join([run('2', '4', true)]);
  assert.equal(reached.isEnd(), false);
});

test("another's record between two runs ends the way", () => {
  const reached = reach('0');
  assert.deepEqual(reached.join([run('0', '1'), run('2', '4', false)]), { after: '0', cursor: '1' });
  assert.equal(reached.isEnd(), false);
});

test('after a step that was not taken there is none', () => {
  const reached = reach('0');
  reached.join([run('0', '1', false)]);
  reached.lose();
  assert.equal(reached.join([run('1', '2', false)]), null);
  assert.equal(reached.isEnd(), false);
});

test('who has met no feed goes nowhere, and answers without runs lead nowhere', () => {
  assert.equal(reach('').join([run('', '2', false)]), null);
  const reached = reach('0');
  assert.equal(reached.join([]), null);
  assert.equal(reached.isEnd(), false);
});
