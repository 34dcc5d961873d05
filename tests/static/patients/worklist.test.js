import assert from 'node:assert/strict';
import { test } from 'node:test';
import { worklist } from '../../../static/app/screens/patients/worklist.js';

const record = (id, kind, patient, body = {}, supersedes = []) => ({ id, kind, patient, body, supersedes, digest: `digest of ${id}` });
const patient = (id, full_name = id) => record(id, 'patient', id, { full_name });

test('who was worked on last stands first', () => {
  const records = [patient('1'), patient('2'), record('3', 'examination', '1', { examined_on: '2026-11-20' })];
  assert.deepEqual(worklist(records).map(({ id, state }) => [id, state]), [['1', 'measured'], ['2', 'to measure']]);
});

test('a corrected patient is shown once, under the first record’s id', () => {
  const [entry, ...others] = worklist([patient('1', 'Ana Vrel'), record('2', 'patient', '1', { full_name: 'Ana Vrell' }, ['1'])]);
  assert.deepEqual([entry.id, entry.body.full_name, entry.conflict, others.length], ['1', 'Ana Vrell', false, 0]);
});

test('two versions made apart are one patient with a conflict', () => {
  const records = [patient('1'), record('2', 'patient', '1', { full_name: 'a' }, ['1']), record('3', 'patient', '1', { full_name: 'b' }, ['1'])];
  const [entry, ...others] = worklist(records);
  assert.deepEqual([entry.id, entry.body.full_name, entry.conflict, others.length], ['1', 'b', true, 0]);
});

test('a patient taken back is no longer listed', () => {
  assert.deepEqual(worklist([patient('1'), record('2', 'retraction', '1', { record_id: '1', reason: 'entered twice' })]), []);
});

const join = (id, a, b) => record(id, 'join', a, { patient_a: a, patient_b: b, reason: 'Same child.' });

test('two who are joined are one row, under the first, as far along as their newest examination', () => {
  const records = [
    patient('1', 'Ana Vrel'), patient('2', 'Anna Vrel'), record('3', 'examination', '2', { examined_on: '2026-11-20' }), join('4', '1', '2'),
  ];
  const [entry, ...others] = worklist(records);
  assert.deepEqual([entry.id, entry.body.full_name, entry.also, entry.state, others.length], ['1', 'Ana Vrel', [{ full_name: 'Anna Vrel' }], 'measured', 0]);
});

test('parted again, they are two rows', () => {
  const records = [patient('1'), patient('2'), join('3', '1', '2'), record('4', 'retraction', '1', { record_id: '3', reason: 'Cousins.' })];
  assert.deepEqual(worklist(records).map(({ id, also }) => [id, also.length]).sort(), [['1', 0], ['2', 0]]);
});

test('when the entry in front is taken back, the other still stands for the person', () => {
  const records = [patient('1'), patient('2'), join('3', '1', '2'), record('4', 'retraction', '1', { record_id: '1', reason: 'In error.' })];
  assert.deepEqual(worklist(records).map(({ id }) => id), ['2']);
});

test('what is open, or was touched last, under the other entry is the person’s', () => {
  const window = { earliest_at: 'early', latest_at: 'late' };
  const operation = record('5', 'operation', '2', { operated_on: '2026-11-25', signature_id: 'S', window });
  const records = [
    patient('1'), patient('2'), record('2b', 'patient', '2', {}, ['2']), record('2c', 'patient', '2', {}, ['2']), patient('3'), join('4', '1', '2'), operation,
  ];
  assert.deepEqual(worklist(records).map(({ id, toAdjust, conflict }) => [id, toAdjust, conflict]), [['1', window, true], ['3', null, false]]);
});
