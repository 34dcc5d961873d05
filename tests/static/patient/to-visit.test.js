import assert from 'node:assert/strict';
import { test } from 'node:test';
import { toVisit } from '../../../static/app/screens/patient/to-visit.js';

const followed = (/** @type {any[]} */ visits = []) => /** @type {any} */ ([{ operation: { id: 'O', patient: 'P', body: { signature_id: 'S' } }, visits, endedOn: null }]);
const signed = (/** @type {string} */ id) => /** @type {any} */ ({ state: 'signed', signature: { id } });
const measured = /** @type {any} */ ({ state: 'measured', examination: { id: 'E' } });
const TO = '/patients/P/visit/O/new';

test('the plan that was done leads to its visits, a plan made since does not', () => {
  assert.deepEqual(toVisit(followed(), signed('S'), []), { to: TO, isBegun: false });
  assert.equal(toVisit(followed(), signed('later'), []), null);
  assert.equal(toVisit([], signed('S'), []), null);
});

test('an examination of a visit leads to the next visit, one for a new plan does not', () => {
  assert.deepEqual(toVisit(followed([{ body: { examination_id: 'E' } }]), measured, []), { to: TO, isBegun: false });
  assert.equal(toVisit(followed([{ body: {} }]), measured, []), null);
});

test('a visit that was begun is found again wherever the case stands', () => {
  assert.deepEqual(toVisit(followed(), measured, ['follow-up/O']), { to: TO, isBegun: true });
});
