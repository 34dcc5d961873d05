import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lineOf, whyOutdated } from '../../../static/app/screens/patient/line.js';

const record = (id, kind, body = {}, supersedes = []) => ({ id, kind, patient: 'P', body, supersedes, digest: `digest of ${id}` });
const PATIENT = { ...record('P', 'patient', { full_name: 'Ana Vrell' }) };
const examination = (id, supersedes = []) => record(id, 'examination', { examined_on: '2026-11-20' }, supersedes);
const plan = (id, examined, patient = PATIENT) =>
  record(id, 'plan', {
    examination_id: examined.id,
    examination_digest: examined.digest,
    patient_id: patient.id,
    patient_digest: patient.digest,
  });
const signature = (id, signed) => record(id, 'signature', { plan_id: signed.id, plan_digest: signed.digest });

test('a patient who is not on this phone has no line', () => {
  assert.equal(lineOf([], 'P'), null);
});

test('plans and their signatures stand under the examination they were made from', () => {
  const e = examination('e');
  const p = plan('p', e);
  const s = signature('s', p);
  const line = lineOf([PATIENT, e, p, s], 'P');
  assert.deepEqual(line.sittings, [{ examination: e, versions: 1, plans: [{ plan: p, signature: s, patientChanged: false }] }]);
  assert.deepEqual([line.outdated, line.conflicts], [[], []]);
});

test('a plan whose examination was corrected is no longer current, and says why', () => {
  const first = examination('e1');
  const corrected = examination('e2', ['e1']);
  const old = plan('p', first);
  const records = [PATIENT, first, corrected, old];
  const line = lineOf(records, 'P');
  assert.deepEqual(line.outdated.map((planned) => planned.plan.id), ['p']);
  assert.deepEqual(line.sittings.map(({ examination: { id }, versions, plans }) => [id, versions, plans]), [['e2', 2, []]]);
  assert.match(whyOutdated(records, old), /changed after/);
});

test('a plan whose examination was taken back says so', () => {
  const e = examination('e');
  const old = plan('p', e);
  const records = [PATIENT, e, old, record('r', 'retraction', { record_id: 'e', reason: 'wrong patient' })];
  assert.deepEqual(lineOf(records, 'P').outdated.length, 1);
  assert.match(whyOutdated(records, old), /taken back/);
});

test('where no examinations are given out, a plan stands by itself and nothing calls it outdated', () => {
  const p = plan('p', examination('e'));
  const s = signature('s', p);
  const line = lineOf([PATIENT, p, s], 'P');
  assert.deepEqual(line.alone, [{ plan: p, signature: s, patientChanged: false }]);
  assert.deepEqual([line.outdated, line.sittings, line.progress.state], [[], [], 'signed']);
});

test('a plan made with other details of the patient is marked', () => {
  const e = examination('e');
  const corrected = record('P2', 'patient', { full_name: 'Ana Vrel' }, ['P']);
  const [{ plans }] = lineOf([PATIENT, corrected, e, plan('p', e)], 'P').sittings;
  assert.equal(plans[0].patientChanged, true);
});

test('two versions of one examination are a conflict, two examinations are none', () => {
  const apart = [PATIENT, examination('a'), examination('b', ['a']), examination('c', ['a'])];
  assert.deepEqual(lineOf(apart, 'P').conflicts.map(({ kind, heads }) => [kind, heads.map(({ id }) => id)]), [['examination', ['c', 'b']]]);
  assert.deepEqual(lineOf([PATIENT, examination('a'), examination('b')], 'P').conflicts, []);
});
