import assert from 'node:assert/strict';
import { test } from 'node:test';
import { isVoid, patientNow, piecesOf, signatureOf, standingOf } from '../../../static/app/planning/standing.js';

const record = (id, kind, body = {}, supersedes = []) => ({ id, kind, patient: 'p1', supersedes, body, digest: `digest of ${id}` });
const patient = record('p1', 'patient');
const examination = record('e1', 'examination');
const plan = record('l1', 'plan', { patient_id: 'p1', examination_id: 'e1' });
const signature = record('s1', 'signature', { plan_id: 'l1', plan_digest: 'digest of l1' });
const signed = [patient, examination, plan, signature];

test('a signed plan that nothing touched since stands', () => {
  assert.deepEqual(standingOf(signed, plan, signature), { retraction: null, successors: [], examinationChanged: false, patientChanged: false });
  assert.ok(!isVoid(standingOf(signed, plan, signature)));
});

test('a newer plan in its place is its successor, through every step between', () => {
  const records = [...signed, record('l2', 'plan', {}, ['l1']), record('l3', 'plan', {}, ['l2'])];
  assert.deepEqual(standingOf(records, plan).successors.map(({ id }) => id), ['l3']);
  assert.ok(isVoid(standingOf(records, plan)));
});

test('a plan or a signature that was taken back does not stand, and the reason is at hand', () => {
  for (const record_id of ['l1', 's1']) {
    const taken = record('r1', 'retraction', { record_id, reason: 'wrong patient' });
    assert.equal(standingOf([...signed, taken], plan, signature).retraction.body.reason, 'wrong patient');
  }
});

test('a corrected examination or patient is told', () => {
  const corrected = standingOf([...signed, record('e2', 'examination', {}, ['e1'])], plan);
  assert.deepEqual([corrected.examinationChanged, corrected.patientChanged], [true, false]);
  assert.equal(standingOf([...signed, record('p2', 'patient', {}, ['p1'])], plan).patientChanged, true);
});

test('a piece that has not arrived is no change', () => {
  assert.equal(standingOf([patient, plan, signature], plan).examinationChanged, false);
});

test('a signature counts only for the very plan it was given for', () => {
  assert.equal(signatureOf(signed, plan).id, 's1');
  assert.equal(signatureOf(signed, { ...plan, digest: 'another' }), undefined);
});

test('a card has its three pieces or is not made', () => {
  assert.deepEqual(piecesOf(signed, signature), { patient, plan, signature });
  assert.equal(piecesOf([patient, signature], signature), null);
});

test('the present version of the patient is told only where it is another than the signed one', () => {
  assert.equal(patientNow(signed, { patient }), null);
  assert.equal(patientNow([...signed, record('p2', 'patient', {}, ['p1'])], { patient }).id, 'p2');
});

test('of two present versions the newest is taken, in whatever order they came, and never the signed one', () => {
  const [second, third] = [record('p2', 'patient', {}, ['p1']), record('p3', 'patient', {}, ['p1'])];
  assert.equal(patientNow([...signed, third, second], { patient }).id, 'p3');
  assert.equal(patientNow([...signed, record('p0', 'patient')], { patient }).id, 'p0');
});
