import assert from 'node:assert/strict';
import { test } from 'node:test';
import { adjustmentKept, adjustmentsOf, writtenBy } from '../../../static/app/planning/settling.js';

const record = (/** @type {string} */ id, /** @type {string} */ kind, /** @type {any} */ body) =>
  /** @type {any} */ ({ id, kind, patient: 'p', supersedes: [], digest: `digest of ${id}`, body });
const operation = record('1', 'operation', { operated_on: '2026-11-25', signature_id: 's', surgeon_name: 'Dr Roan' });
const adjustment = record('2', 'adjustment', { operation_id: '1', operation_digest: 'digest of 1', surgeon_name: 'Dr Roan', note: 'Tied.' });

test('who settles is named as who wrote it, unless it was their own work', () => {
  assert.deepEqual(writtenBy('operation', { surgeon_name: 'Dr Roan' }, 'Dr Brandt'), { surgeon_name: 'Dr Roan', recorded_by: 'Dr Brandt' });
  assert.deepEqual(writtenBy('operation', { surgeon_name: 'Dr Roan', recorded_by: 'Dr Brandt' }, 'Dr Roan'), { surgeon_name: 'Dr Roan' });
});

test('a record that names no surgeon is copied as it is', () => {
  assert.deepEqual(writtenBy('examination', { examined_on: '2026-11-25' }, 'Dr Brandt'), { examined_on: '2026-11-25' });
});

test('the adjustment of the chosen operation is said of the record that takes its place', () => {
  assert.deepEqual(adjustmentsOf([operation, adjustment], operation), [adjustment]);
  const saved = record('9', 'operation', operation.body);
  assert.deepEqual(adjustmentKept(adjustment, saved, 'Dr Brandt'), {
    patient: 'p',
    supersedes: ['2'],
    body: { operation_id: '9', operation_digest: 'digest of 9', surgeon_name: 'Dr Roan', note: 'Tied.', recorded_by: 'Dr Brandt' },
  });
});
