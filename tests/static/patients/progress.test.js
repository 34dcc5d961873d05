import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newestFirst, progressOf } from '../../../static/app/screens/patients/progress.js';

const examination = (id, examined_on = '2026-11-20') => ({ id, digest: `digest of ${id}`, body: { examined_on } });
const planFor = (id, { id: examination_id, digest }) => ({ id, digest: `digest of ${id}`, body: { examination_id, examination_digest: digest } });
const signatureFor = (id, { id: plan_id, digest }) => ({ id, body: { plan_id, plan_digest: digest } });
const progress = ({ examinations = [], plans = [], signatures = [] }, isHere = () => true) => progressOf({ examinations, plans, signatures }, isHere);

test('a patient without an examination is to be measured', () => {
  assert.deepEqual(progress({}), { state: 'to measure' });
});

test('each step along the line is a state of its own', () => {
  const e = examination('e');
  const p = planFor('p', e);
  const s = signatureFor('s', p);
  assert.deepEqual(progress({ examinations: [e] }), { state: 'measured', examination: e });
  assert.deepEqual(progress({ examinations: [e], plans: [p] }), { state: 'planned', examination: e, plan: p });
  assert.deepEqual(progress({ examinations: [e], plans: [p], signatures: [s] }), { state: 'signed', examination: e, plan: p, signature: s });
});

test('a plan from an earlier version of the examination does not count', () => {
  const first = examination('e1');
  const corrected = examination('e2');
  assert.equal(progress({ examinations: [corrected], plans: [planFor('p', first)] }).state, 'measured');
});

test('a plan whose examination has another digest does not count', () => {
  const e = examination('e');
  assert.equal(progress({ examinations: [e], plans: [planFor('p', { ...e, digest: 'another' })] }).state, 'measured');
});

test('a signature of another plan, or of another text of the plan, does not count', () => {
  const e = examination('e');
  const p = planFor('p', e);
  for (const stray of [signatureFor('s', planFor('q', e)), signatureFor('s', { ...p, digest: 'another' })]) {
    assert.equal(progress({ examinations: [e], plans: [p], signatures: [stray] }).state, 'planned');
  }
});

test('of two plans the signed one counts, else the newer', () => {
  const e = examination('e');
  const [older, newer] = [planFor('p1', e), planFor('p2', e)];
  assert.equal(progress({ examinations: [e], plans: [older, newer] }).plan, newer);
  assert.equal(progress({ examinations: [e], plans: [older, newer], signatures: [signatureFor('s', older)] }).plan, older);
});

test('the newest examination is the one done last, whenever it was entered', () => {
  const late = examination('a', '2026-11-22');
  const early = examination('b', '2026-11-01');
  assert.deepEqual(newestFirst([early, late]), [late, early]);
  assert.deepEqual(newestFirst([examination('a'), examination('b')]).map(({ id }) => id), ['b', 'a']);
});

test('a device that is given no examinations tells the state by the plans and signatures alone', () => {
  const p = planFor('p', examination('e'));
  const s = signatureFor('s', p);
  const none = () => false;
  assert.deepEqual(progress({ plans: [p], signatures: [s] }, none), { state: 'signed', plan: p, signature: s });
  assert.deepEqual(progress({ plans: [p] }, none), { state: 'planned', plan: p });
});

test('a plan whose examination was taken back, and not merely withheld, does not count', () => {
  assert.deepEqual(progress({ plans: [planFor('p', examination('e'))] }, () => true), { state: 'to measure' });
});
