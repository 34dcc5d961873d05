import assert from 'node:assert/strict';
import { test } from 'node:test';
import { carriedWords } from '../../../static/app/parts/carried/words.js';
import { choicesOf } from '../../../static/app/screens/hand-over/choices.js';
import { carriedFor } from '../../../static/app/screens/status/what.js';
import { toldOf } from '../../../static/app/screens/take-over/told.js';

const FROM = { username: 'noor', full_name: 'Dr Noor Haddad' };
const NOTHING = { from: FROM, count: 0, taken: 0, here: 0, notHeld: 0, carried: 0, stuck: 0 };
const record = (id, patient = 'P', author = 'noor') => ({ id, patient, author, kind: 'examination', supersedes: [], body: {} });
const carried = (id, maker, stuck = false) => ({ id, state: 'waiting', carried: { tag: 'x', stuck, maker } });

test('what became of a file is told with its counts, and nothing that did not happen', () => {
  assert.deepEqual(toldOf(NOTHING), ['Nothing in it was new: all of it was here already.']);
  assert.deepEqual(toldOf({ ...NOTHING, count: 3, taken: 1, here: 2, carried: 1 }), [
    '1 record from Dr Noor Haddad is on this device now.',
    '2 records were here already.',
    '1 record the clinic has not got yet: this device brings it there with its own.',
  ]);
  assert.match(toldOf({ ...NOTHING, taken: 2, stuck: 2 })[1], /2 records only the device that made them can send/);
  assert.match(toldOf({ ...NOTHING, taken: 2, notHeld: 4 })[1], /4 records were left out/);
});

test('carried records are told by number and maker, and only those that are shown', () => {
  const entries = [carried('a', 'Dr Noor Haddad'), carried('b', 'Bilal Osei'), { id: 'c', state: 'waiting', carried: null }];
  assert.equal(carriedWords([record('c'), record('d')], entries), '');
  assert.match(carriedWords([record('a'), record('c')], entries), /^1 record here was handed over by a file from Dr Noor Haddad\. The clinic has neither got nor checked it yet\.$/);
  assert.match(carriedWords([record('a'), record('b')], entries), /^2 records here were .* from Dr Noor Haddad and Bilal Osei\. .* checked them yet/);
  assert.match(carriedWords([record('a')], [carried('a', '')]), /from noor\./);
});

test('in the list of what waits it stands for whom a record is carried', () => {
  assert.equal(carriedFor({ tag: 'x', stuck: false, maker: 'Dr Noor Haddad' }, record('a')), 'carried for Dr Noor Haddad');
  assert.equal(carriedFor({ tag: '', stuck: true, maker: '' }, record('a')), 'made by noor; only their device can send it');
});

test('the choices tell how much each gives', () => {
  const records = [record('a'), record('b'), record('c', 'Q')];
  const [unsent, all] = choicesOf(records, [{ id: 'a', state: 'waiting' }]);
  assert.deepEqual([unsent.count, all.count], [2, 3]);
  assert.equal(unsent.hint, '1 unsent; 2 records with what belongs to their patients');
  assert.equal(choicesOf(records, [])[0].hint, 'nothing waits here');
});
