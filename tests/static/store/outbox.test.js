import assert from 'node:assert/strict';
import { test } from 'node:test';
import { nextBatch, verdicts } from '../../../static/app/store/outbox.js';

const record = (id, patient, more = {}) => ({ id, kind: 'examination', patient, supersedes: [], body: {}, ...more });
const entry = (id, sequence, state = 'waiting') => ({ id, sequence, state, since: '', code: '', text: '', field: '' });

function batch(records, entries, limits) {
  const byId = new Map(records.map(each => [each.id, each]));
  return nextBatch(entries, id => byId.get(id), limits).map(each => each.id);
}

const to = (records, answers) => verdicts(records, answers).map(verdict => verdict.to);

test('records go in the order of saving, whatever their ids', () => {
  const records = [record('c', 'P'), record('a', 'P'), record('b', 'Q')];
  assert.deepEqual(batch(records, [entry('a', 2), entry('c', 1), entry('b', 3)]), ['c', 'a', 'b']);
});

test('what needs attention is not sent', () => {
  assert.deepEqual(batch([record('a', 'P'), record('b', 'Q')], [entry('a', 1, 'attention'), entry('b', 2)]), ['b']);
});

test('what mentions a record that needs attention waits behind it, and what mentions that waits too', () => {
  const records = [
    record('P', 'P', { kind: 'patient' }),
    record('exam', 'P'),
    record('exam-2', 'R', { supersedes: ['exam-1'] }),
    record('plan', 'R', { body: { examination_id: 'exam-2' } }),
    record('other', 'R'),
    record('next', 'Q'),
  ];
  const entries = [
    entry('P', 1, 'attention'), entry('exam', 2), entry('exam-1', 3, 'attention'), entry('exam-2', 4), entry('plan', 5), entry('other', 6),
    entry('next', 7),
  ];
  assert.deepEqual(batch(records, entries), ['other', 'next']);
});

test('a patient whose record was refused for now is left out for the round, others are not', () => {
  const records = [record('a', 'P'), record('b', 'Q')];
  assert.deepEqual(batch(records, [entry('a', 1), entry('b', 2)], { held: new Set(['P']) }), ['b']);
});

test('while something is under way, its patient and what mentions it wait, and so does what mentions those', () => {
  const records = [
    record('exam-2', 'P'),
    record('join', 'R', { body: { other: 'P' } }),
    record('next of R', 'R'),
    record('list', 'list', { body: { operations: [{ plan_id: 'exam-2' }] } }),
    record('free', 'Q'),
  ];
  const entries = records.map((each, index) => entry(each.id, index));
  const underWay = [record('P', 'P', { kind: 'patient' })];
  assert.deepEqual(batch(records, entries, { underWay }), ['free']);
  assert.deepEqual(batch(records, entries), ['exam-2', 'join', 'next of R', 'list', 'free']);
});

test('what is under way is not sent again beside itself', () => {
  const records = [record('a', 'a', { kind: 'patient' }), record('b', 'b', { kind: 'patient' })];
  assert.deepEqual(batch(records, [entry('a', 1), entry('b', 2)], { underWay: [records[0]] }), ['b']);
});

test('a batch ends at its number of records, and at a megabyte, but is never empty', () => {
  const many = Array.from({ length: 300 }, (_, index) => record(`id-${index}`, 'P'));
  const entries = many.map((each, index) => entry(each.id, index));
  assert.equal(batch(many, entries).length, 300);
  assert.equal(batch(many, entries, { most: 7 }).length, 7);
  const large = ['a', 'b', 'c'].map(id => record(id, 'P', { body: { note: 'x'.repeat(600_000) } }));
  assert.deepEqual(batch(large, large.map((each, index) => entry(each.id, index))), ['a']);
});

test('accepted and duplicate mean that the clinic has it', () => {
  const records = [record('a', 'P'), record('b', 'P')];
  assert.deepEqual(to(records, [{ id: 'a', status: 'accepted' }, { id: 'b', status: 'duplicate' }]), ['sent', 'sent']);
});

test('a refusal for good needs attention, one for now waits', () => {
  const records = [record('a', 'P'), record('b', 'Q')];
  const answers = [{ id: 'a', status: 'rejected', retryable: false }, { id: 'b', status: 'rejected', retryable: true }];
  assert.deepEqual(to(records, answers), ['attention', 'waiting']);
});

test('what is refused behind something that did not get through waits for it', () => {
  const records = [record('P', 'P', { kind: 'patient' }), record('a', 'P'), record('b', 'Q')];
  const answers = [
    { id: 'P', status: 'rejected', retryable: true },
    { id: 'a', status: 'rejected', retryable: false, code: 'patient_unknown' },
    { id: 'b', status: 'rejected', retryable: false },
  ];
  assert.deepEqual(to(records, answers), ['waiting', 'waiting', 'attention']);
});

test('a record that the answer leaves out, or says an unknown word about, stays waiting', () => {
  assert.deepEqual(to([record('a', 'P'), record('b', 'P')], [{ id: 'b', status: 'perhaps' }]), ['waiting', 'waiting']);
});
