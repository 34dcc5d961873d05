import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lean, operatedOf } from '../../../static/app/auditing/operated.js';

const record = (id, kind, patient, body = {}, supersedes = []) => ({ id, kind, patient, supersedes, body, digest: `digest of ${id}` });
const muscle = (eye) => ({ eye, muscle: 'MR', done: { operation: 'recess' } });
const operation = (id, patient, signature, on, eye = 'right') =>
  record(id, 'operation', patient, { signature_id: signature, operated_on: on, surgeon_name: 'Dr Ilse Marden', muscles: [muscle(eye)] });

const clinic = [
  record('p1', 'patient', 'p1', { born_on: '2020-01-30' }),
  record('l1', 'plan', 'p1', { told: 'plan' }),
  record('s1', 'signature', 'p1', { plan_id: 'l1' }),
  operation('o1', 'p1', 's1', '2026-01-10'),
  record('e1', 'examination', 'p1', { told: 'examination' }),
  record('f1', 'follow_up', 'p1', { operation_id: 'o1', seen_on: '2026-02-20', examination_id: 'e1' }),
];

test('an operation is told with its plan, its visits and whose it is', () => {
  const { operations, absent } = operatedOf(clinic);
  assert.equal(absent, 0);
  assert.equal(operations.length, 1);
  const [{ reported, person, bornOn }] = operations;
  assert.deepEqual([reported.id, reported.reoperated_days, person, bornOn], ['o1', null, 'p1', '2020-01-30']);
  assert.deepEqual(reported.care.attended, [{ follow_up: clinic[5].body, examination: { told: 'examination' } }]);
});

test('who was operated again on the same eye is told so, by days', () => {
  const again = [...clinic, record('l2', 'plan', 'p1'), record('s2', 'signature', 'p1', { plan_id: 'l2' }), operation('o2', 'p1', 's2', '2026-04-20')];
  assert.deepEqual(operatedOf(again).operations.map(({ reported }) => reported.reoperated_days), [100, null]);
});

test('an operation whose plan is not here is counted and not told', () => {
  const { operations, absent } = operatedOf([...clinic, operation('o9', 'p9', 's9', '2026-03-01')]);
  assert.deepEqual([operations.length, absent], [1, 1]);
});

test('a result is known by its records: a new visit makes another key', () => {
  const [before] = operatedOf(clinic).operations;
  const [after] = operatedOf([...clinic, record('f2', 'follow_up', 'p1', { operation_id: 'o1', seen_on: '2026-07-20' })]).operations;
  assert.notEqual(before.key, after.key);
  assert.equal(operatedOf([...clinic]).operations[0].key, before.key);
  for (const id of ['o1', 'f1', 'e1']) assert.ok(before.key.includes(id));
});

test('what is null is left out, zero and empty are kept', () => {
  assert.deepEqual(lean({ a: null, b: 0, c: '', d: [{ e: null, f: false }] }), { b: 0, c: '', d: [{ f: false }] });
});
