import assert from 'node:assert/strict';
import { test } from 'node:test';
import { theatreWay } from '../../../static/app/planning/theatre-way.js';

/** @param {string} id @param {string} kind @param {object} body @param {object} [envelope] @returns {any} */
const record = (id, kind, body, envelope = {}) => ({ id, kind, patient: 'patient', digest: `digest of ${id}`, supersedes: [], recorded_at: '2026-11-25T09:00:00Z', body, ...envelope });

const PLAN = record('plan', 'plan', { patient_id: 'patient', examination_id: 'examination' });
const SIGNATURE = record('signature', 'signature', { plan_id: 'plan', plan_digest: PLAN.digest });
const PIECES = { plan: PLAN, signature: SIGNATURE };
const SIGNED = [PLAN, SIGNATURE];
const SET_UP = record('set-up', 'set_up', { plan_id: 'plan', plan_digest: PLAN.digest });
const OPERATION = record('operation', 'operation', { signature_id: 'signature', operated_on: '2026-11-25', window: { earliest_at: '2026-11-25T15:00:00Z', latest_at: '2026-11-26T09:00:00Z' } });
const ADJUSTMENT = record('adjustment', 'adjustment', { operation_id: 'operation', operation_digest: OPERATION.digest });

/** @param {string} phase */
const passed = (phase) => record(`check-${phase}`, 'theatre_check', { signature_id: 'signature', phase, outcome: 'passed' });
const READY = [...SIGNED, SET_UP];
const TIMED_OUT = [...READY, passed('sign in'), passed('time out')];
const DONE = [...TIMED_OUT, OPERATION, passed('sign out')];

const SURGEON = () => true;
const NURSE = (/** @type {string} */ kind) => kind === 'theatre_check';
const COORDINATOR = () => false;

test('a surgeon is led from the set-up to the adjustment, one step at a time', () => {
  const days = [SIGNED, READY, [...READY, passed('sign in')], TIMED_OUT, [...TIMED_OUT, OPERATION], DONE, [...DONE, ADJUSTMENT]];

  assert.deepEqual(days.map((day) => theatreWay(day, PIECES, SURGEON).next), ['set-up', 'sign in', 'time out', 'operation', 'sign out', 'adjustment', null]);
});

test('a nurse is led through the checks alone, whatever nobody prepared or recorded', () => {
  const days = [SIGNED, READY, [...READY, passed('sign in')], TIMED_OUT, [...TIMED_OUT, passed('sign out')]];

  assert.deepEqual(days.map((day) => theatreWay(day, PIECES, NURSE).next), ['sign in', 'sign in', 'time out', 'sign out', null]);
});

test('who may write nothing of it is led nowhere and sees how far it is', () => {
  const way = theatreWay([...TIMED_OUT, OPERATION], PIECES, COORDINATOR);

  assert.deepEqual([way.next, way.isPrepared, way.isRecorded, way.isOpen, way.phase?.phase], [null, true, true, true, 'sign out']);
});

test('an operation that was recorded before it was checked does not pass the checks', () => {
  assert.equal(theatreWay([...READY, OPERATION], PIECES, SURGEON).next, 'sign in');
});

test('nothing is next of a card that must not be used', () => {
  const newer = record('newer', 'plan', PLAN.body, { supersedes: ['plan'] });
  const takenBack = record('retraction', 'retraction', { record_id: 'signature', reason: 'Wrong side.' });

  assert.equal(theatreWay([...READY, newer], PIECES, SURGEON).next, null);
  assert.equal(theatreWay([...READY, takenBack], PIECES, SURGEON).next, null);
});

test('the latest list that names the plan is shown with its place there', () => {
  const entries = [{ patient_id: 'other', plan_id: 'other' }, { patient_id: 'patient', plan_id: 'plan' }];
  const list = (/** @type {string} */ id, /** @type {string} */ on, /** @type {any[]} */ named) =>
    record(id, 'operating_list', { on, starts_at: '08:00', team: 'Island team', entries: named }, { patient: id });
  const lists = [list('first', '2026-11-25', entries), list('second', '2026-11-26', entries.toReversed()), list('third', '2026-11-27', entries.slice(0, 1))];

  assert.deepEqual(theatreWay([...SIGNED, ...lists], PIECES, SURGEON).place, { id: 'second', on: '2026-11-26', number: 1 });
  assert.equal(theatreWay(SIGNED, PIECES, SURGEON).place, null);
});
