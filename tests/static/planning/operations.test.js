import assert from 'node:assert/strict';
import { test } from 'node:test';
import { earlierQuestion, operationsBy, operationsOf } from '../../../static/app/planning/operations.js';

const WINDOW = { earliest_at: 'early', latest_at: 'late' };
const record = (/** @type {string} */ id, /** @type {string} */ kind, /** @type {any} */ body, supersedes = []) =>
  /** @type {any} */ ({ id, kind, patient: 'p', supersedes, digest: `digest of ${id}`, body });
const operation = (/** @type {string} */ id, operated_on = '2026-11-25', signature_id = 's', supersedes = /** @type {any} */ ([])) =>
  record(id, 'operation', { operated_on, signature_id, window: WINDOW }, supersedes);
const adjustment = (/** @type {string} */ id, /** @type {any} */ of) => record(id, 'adjustment', { operation_id: of.id, operation_digest: of.digest });

test('a window is open until its suture was adjusted', () => {
  const done = operation('1');
  assert.deepEqual(operationsOf([done], 'p').map(({ open }) => open), [WINDOW]);
  assert.deepEqual(operationsOf([done, adjustment('2', done)], 'p').map(({ open }) => open), [null]);
});

test('an adjustment of an operation that was corrected since no longer counts', () => {
  const [first, again] = [operation('1'), operation('3', '2026-11-25', 's', ['1'])];
  const [{ operation: now, adjustment: adjusted, open }] = operationsOf([first, adjustment('2', first), again], 'p');
  assert.deepEqual([now.id, adjusted, open], ['3', undefined, WINDOW]);
});

test('a later examination is offered each signed plan once, in the order in which they were done', () => {
  const all = [operation('2', '2026-11-25', 'later'), operation('3', '2020-01-01', 'earlier'), operation('4', '2020-01-01', 'earlier')];
  assert.deepEqual(earlierQuestion(all, 'p')?.operations.map(({ signature_id }) => signature_id), ['earlier', 'later']);
  assert.equal(earlierQuestion([], 'p'), null);
});

test('who was entered twice and joined was operated on under either entry', () => {
  const join = record('5', 'join', { patient_a: 'p', patient_b: 'q', reason: 'Same.' });
  const other = { ...operation('1', '2019-01-01', 'under the other'), patient: 'q' };
  const signatures = (/** @type {any[]} */ all, /** @type {string} */ patient) => earlierQuestion(all, patient)?.operations.map(({ signature_id }) => signature_id);
  assert.deepEqual(signatures([operation('3'), other, join], 'p'), ['under the other', 's']);
  assert.deepEqual(signatures([operation('3'), other, join], 'q'), ['under the other', 's']);
  assert.deepEqual(signatures([operation('3'), other], 'p'), ['s']);
});

test('records of one signature are found together', () => {
  const all = [operation('1'), operation('2'), operation('3', '2026-11-25', 'other')];
  assert.deepEqual(operationsBy(all, record('s', 'signature', {})).map(({ operation: { id } }) => id), ['1', '2']);
});
