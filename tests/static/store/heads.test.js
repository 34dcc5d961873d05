import assert from 'node:assert/strict';
import { test } from 'node:test';
import { find, heads, history, retractionOf, things } from '../../../static/app/store/heads.js';

/** Letters stand for ids: they sort in the order of making. */
const record = (id, { kind = 'examination', patient = 'P', supersedes = [], body = {} } = {}) => ({ id, kind, patient, supersedes, body });
const retraction = (id, of, more = {}) => record(id, { kind: 'retraction', body: { record_id: of, reason: 'wrong patient' }, ...more });
const ids = records => records.map(each => each.id);

test('the head of a chain is its last version', () => {
  const records = [record('a'), record('b', { supersedes: ['a'] }), record('c', { supersedes: ['b'] })];
  assert.deepEqual(ids(heads(records, 'examination', 'P')), ['c']);
  assert.deepEqual(ids(history(records, 'b')), ['a', 'b', 'c']);
});

test('two examinations are two things, newest first, and no conflict', () => {
  const records = [record('a'), record('b')];
  assert.deepEqual(ids(heads(records, 'examination', 'P')), ['b', 'a']);
  assert.deepEqual(things(records, 'examination').map(thing => thing.conflict), [false, false]);
});

test('two versions of one thing made apart are a conflict, and a third that supersedes both settles it', () => {
  const apart = [record('a'), record('b', { supersedes: ['a'] }), record('c', { supersedes: ['a'] })];
  const [thing, ...others] = things(apart, 'examination', 'P');
  assert.deepEqual([ids(thing.heads), thing.conflict, others.length], [['c', 'b'], true, 0]);

  const settled = [...apart, record('d', { supersedes: ['b', 'c'] })];
  assert.deepEqual(things(settled, 'examination', 'P').map(({ heads: [head], conflict }) => [head.id, conflict]), [['d', false]]);
  assert.deepEqual(ids(history(settled, 'a')), ['a', 'b', 'c', 'd']);
});

test('the order in which records arrive makes no difference', () => {
  const records = [record('d', { supersedes: ['b', 'c'] }), record('c', { supersedes: ['a'] }), record('b', { supersedes: ['a'] }), record('a')];
  assert.deepEqual(ids(heads(records, 'examination')), ['d']);
  assert.deepEqual(ids(history(records, 'c')), ['a', 'b', 'c', 'd']);
});

test('only records of the kind and the patient asked for count', () => {
  const records = [record('a'), record('b', { patient: 'Q' }), record('c', { kind: 'plan' })];
  assert.deepEqual(ids(heads(records, 'examination', 'P')), ['a']);
  assert.deepEqual(ids(heads(records, 'examination')), ['b', 'a']);
  assert.deepEqual(heads(records, 'signature'), []);
});

test('a retracted version is not current, has its reason, and nothing older comes back by itself', () => {
  const records = [record('a'), record('b', { supersedes: ['a'] }), retraction('c', 'b')];
  assert.deepEqual(heads(records, 'examination', 'P'), []);
  assert.equal(retractionOf(records, 'b').body.reason, 'wrong patient');
  assert.equal(retractionOf(records, 'a'), null);
});

test('retracting one side of a conflict settles it', () => {
  const records = [record('a'), record('b', { supersedes: ['a'] }), record('c', { supersedes: ['a'] }), retraction('d', 'c')];
  assert.deepEqual(things(records, 'examination').map(({ heads: all, conflict }) => [ids(all), conflict]), [[['b'], false]]);
});

test('a retraction that was itself taken back is none, and taking that back makes it one again', () => {
  const taken = [record('a'), retraction('b', 'a'), retraction('c', 'b')];
  assert.deepEqual(ids(heads(taken, 'examination')), ['a']);
  assert.deepEqual(heads([...taken, retraction('d', 'c')], 'examination'), []);
});

test('two retractions that name each other, which no person can make, end in an answer', () => {
  assert.ok(Array.isArray(heads([record('a'), retraction('b', 'c'), retraction('c', 'b')], 'examination')));
});

test('a version whose predecessor has not arrived yet is current', () => {
  assert.deepEqual(ids(heads([record('b', { supersedes: ['a'] })], 'examination')), ['b']);
});

test('a record is found by its id', () => {
  const records = [record('a'), record('b')];
  assert.equal(find(records, 'b'), records[1]);
  assert.equal(find(records, 'x'), undefined);
});
