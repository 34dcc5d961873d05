import assert from 'node:assert/strict';
import { test } from 'node:test';
import { rowsOf } from '../../../static/app/screens/visits/rows.js';

const followed = ['a', 'b', 'c', 'd', 'e'].map((id) => /** @type {any} */ ({ operation: { id, patient: `patient ${id}` } }));
const next = (/** @type {string} */ id, /** @type {any} */ state, from_on = '2026-12-01') => /** @type {any} */ ({ id, next: state && { state, from_on }, visits: [] });
const attendance = /** @type {any} */ ({
  overdue: ['b', 'a'],
  due: ['c'],
  operations: [next('a', 'overdue'), next('b', 'overdue'), next('c', 'due'), next('d', 'ahead', '2027-05-01'), next('e', 'ahead', '2026-12-24')],
  statements: [],
});
const patientOf = (/** @type {string} */ id) => /** @type {any} */ ({ id });
const told = (/** @type {string} */ id, /** @type {any[]} */ warnings) => /** @type {any} */ ({ id, warnings, notices: [] });
const shown = (/** @type {any[]} */ watched, known = patientOf) =>
  Object.fromEntries(Object.entries(rowsOf({ followed, patientOf: known, attendance, watched })).map(([group, rows]) => [group, rows.map((row) => row.followed.operation.id)]));

test('overdue and due keep the order of the engine, and those to come stand by their day', () => {
  assert.deepEqual(shown([]), { urgent: [], overdue: ['b', 'a'], due: ['c'], coming: ['e', 'd'] });
});

test('whom a warning stands for comes first, and once only', () => {
  assert.deepEqual(shown([told('a', [{}]), told('c', []), told('d', [{}])]), { urgent: ['a', 'd'], overdue: ['b'], due: ['c'], coming: ['e'] });
});

test('a patient whom this device does not hold is not shown as a name without one', () => {
  const known = (/** @type {string} */ id) => (id === 'patient b' ? undefined : patientOf(id));
  assert.deepEqual(shown([], /** @type {any} */ (known)).overdue, ['a']);
});
