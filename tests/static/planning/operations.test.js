import assert from 'node:assert/strict';
import { test } from 'node:test';
import { draftQuestion, earlierQuestion, noteQuestion, operationsBy, operationsOf, unsettledOf } from '../../../static/app/planning/operations.js';

const WINDOW = { earliest_at: 'early', latest_at: 'late' };
const record = (/** @type {string} */ id, /** @type {string} */ kind, /** @type {any} */ body, supersedes = []) =>
  /** @type {any} */ ({ id, kind, patient: 'p', supersedes, digest: `digest of ${id}`, body });
const operation = (/** @type {string} */ id, operated_on = '2026-11-25', signature_id = 's', supersedes = /** @type {any} */ ([])) =>
  record(id, 'operation', { operated_on, signature_id, window: WINDOW }, supersedes);
const adjustment = (/** @type {string} */ id, /** @type {any} */ of) => record(id, 'adjustment', { operation_id: of.id, operation_digest: of.digest });

test('a record is filled in with the practice as it stands, so that it waits after a block as the set-up sheet says', () => {
  const pieces = /** @type {any} */ ({ plan: { body: 'plan' }, signature: { id: 's', body: 'signature' } });
  const who = { operated_on: '2026-11-25', surgeon_name: 'Dr Roan' };
  const asked = (/** @type {any[]} */ all) => draftQuestion(all, pieces, who);
  const practice = (/** @type {string} */ id, /** @type {number} */ value, supersedes = []) => ({ ...record(id, 'practice', { figures: [{ name: 'adjust_after_block_h', value }] }, supersedes), patient: '7' });
  const [first, again] = [practice('7', 8), practice('8', 12, /** @type {any} */ (['7']))];
  assert.deepEqual(asked([]), { plan: 'plan', signature: 'signature', signature_id: 's', ...who, practice: null });
  assert.deepEqual(asked([first, again]).practice, again.body);
});

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

test('of a later examination the engine is asked with every record, in the order in which they were done, for it says what is not settled', () => {
  const all = [operation('2', '2026-11-25', 'later'), operation('3', '2020-01-01', 'earlier'), operation('4', '2020-01-01', 'earlier')];
  assert.deepEqual(earlierQuestion(all, 'p')?.operations.map(({ signature_id }) => signature_id), ['earlier', 'earlier', 'later']);
  assert.equal(earlierQuestion([], 'p'), null);
});

test('two records of one operation, and two adjustments of one record, are told until one replaces both', () => {
  const [one, other] = [operation('1'), operation('2')];
  const adjusted = [adjustment('3', one), adjustment('4', one)];
  const told = (/** @type {any[]} */ all) => unsettledOf(all, 'p').map(({ kind, heads }) => [kind, heads.map(({ id }) => id)]);
  assert.deepEqual(told([one, operation('2', '2026-11-25', 'another plan')]), []);
  assert.deepEqual(told([one, other]), [['operation', ['1', '2']]]);
  assert.deepEqual(told([one, ...adjusted]), [['adjustment', ['4', '3']]]);
  assert.deepEqual(told([one, other, operation('5', '2026-11-25', 's', /** @type {any} */ (['1', '2']))]), []);
});

test('the note is made of the newest record, with all that is not settled beside it', () => {
  const [one, other] = [operation('1'), operation('2')];
  const pieces = /** @type {any} */ ({ plan: { body: 'plan' }, signature: { body: 'signature' } });
  const patient = /** @type {any} */ ({ body: 'patient' });
  const asked = (/** @type {any[]} */ all) => noteQuestion(patient, pieces, operationsOf(all, 'p'));
  assert.deepEqual(asked([one]), { patient: 'patient', plan: 'plan', signature: 'signature', operation: one.body, adjustment: null });
  const adjusted = adjustment('3', one);
  assert.deepEqual(asked([one, other, adjusted]).others, [{ operation: one.body, adjustment: adjusted.body }]);
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
