import assert from 'node:assert/strict';
import { test } from 'node:test';
import { differences } from '../../../static/app/screens/patient/differences.js';

const reading = (horizontal_pd, more = {}) => ({ gaze: 'primary', range: 'distance', correction: 'with', horizontal_pd, vertical_pd: null, ...more });
const plain = (text) => text.replace(/\u202f/g, ' ');
const told = (bodies) => differences(bodies).map(({ words, values }) => [words, ...values.map(plain)]);

test('only what differs is told, with both values', () => {
  const a = { full_name: 'Ana Vrell', born_on: '2019-03-04', hospital_number: '7' };
  assert.deepEqual(told([a, { ...a, born_on: '2019-04-03' }]), [['Birth date', '4 Mar 2019', '3 Apr 2019']]);
  assert.deepEqual(told([a, a]), []);
});

test('readings are compared place by place, whatever their order, with the direction in words', () => {
  const near = reading(-10, { range: 'near' });
  const a = { readings: [reading(-20), near] };
  const b = { readings: [near, reading(20)] };
  assert.deepEqual(told([a, b]), [['primary, distance, with correction', 'exo 20 Δ', 'eso 20 Δ']]);
});

test('what one version lacks is said to be not entered', () => {
  assert.deepEqual(told([{ readings: [reading(20)], note: '' }, { readings: [], note: 'tired' }]), [
    ['Note', 'not entered', 'tired'],
    ['primary, distance, with correction', 'eso 20 Δ', 'not entered'],
  ]);
});

test('a dose differs by its eye, muscle, operation and millimetres', () => {
  const dose = { eye: 'right', muscle: 'MR', operation: 'recess', mm: 5 };
  const plan = (doses) => ({ option: { doses } });
  assert.deepEqual(told([plan([dose]), plan([{ ...dose, mm: 5.5 }])]), [['RIGHT eye, medial rectus', 'recess 5.0 mm', 'recess 5.5 mm']]);
  assert.deepEqual(told([plan([dose]), plan([{ ...dose, eye: 'left' }])]), [
    ['RIGHT eye, medial rectus', 'recess 5.0 mm', 'not entered'],
    ['LEFT eye, medial rectus', 'not entered', 'recess 5.0 mm'],
  ]);
});

test('two readings of one place by other methods, or taken again, are two things', () => {
  const again = [reading(20), reading(25, { repeat: 2 }), reading(18, { method: 'light reflex' })];
  assert.deepEqual(told([{ readings: again }, { readings: again.slice(0, 2) }]), [['primary, distance, with correction, light reflex test', 'eso 18 Δ', 'not entered']]);
});

test('what is told beside the readings is compared too', () => {
  const a = { constancy: 'constant', excyclotorsion_right_deg: 6, ductions: [{ eye: 'right', muscle: 'LR', grade: -3 }], diagnoses: [{ diagnosis: 'sixth nerve palsy', eye: 'right' }], head_posture: { turn: 'right', turn_deg: 20 } };
  assert.equal(told([a, {}]).length, 6);
  assert.deepEqual(told([a, { ...a, ductions: [{ eye: 'right', muscle: 'LR', grade: -1 }] }]), [['Duction, RIGHT eye, lateral rectus', '-3', '-1']]);
});

test('two records of one operation differ muscle by muscle, with the side in words, by who operated and by what went wrong', () => {
  const done = (mm, more = {}) => ({ eye: 'left', muscle: 'MR', planned: null, done: { operation: 'recess', mm, offset: null }, reason: '', state: 'in place', ...more });
  const a = { operated_on: '2026-11-25', surgeon_name: 'Dr Roan', muscles: [done(5)], complications: [] };
  const b = { ...a, surgeon_name: 'Dr Brandt', recorded_by: 'Dr Roan', block_wait_h: 12, muscles: [done(5.5, { limbus_mm: 11, reason: 'Tight.' })], complications: [{ complication: 'bleeding', eye: 'left', muscle: 'MR', note: '', answer: '' }] };
  assert.deepEqual(told([a, b]), [
    ['Surgeon', 'Dr Roan', 'Dr Brandt'],
    ['LEFT eye, medial rectus', 'recess 5.0 mm', 'recess 5.5 mm, 11.0 mm from the limbus'],
    ['Wait after a block', 'not entered', '12 hours'],
    ['Recorded by', 'not entered', 'Dr Roan'],
    ['LEFT eye, medial rectus, reason', 'not entered', 'Tight.'],
    ['Complication 1', 'not entered', 'bleeding, LEFT eye, medial rectus'],
  ]);
});

test('two adjustments differ by what was moved, which way, and the deviation after it', () => {
  const moved = (way) => ({ moved: [{ eye: 'right', muscle: 'LR', way, mm: 1, limbus_mm: null }], after: [{ range: 'distance', horizontal_pd: way === 'loosen' ? 2 : -2, vertical_pd: null }] });
  assert.deepEqual(told([moved('loosen'), moved('tighten')]), [
    ['RIGHT eye, lateral rectus, moved', 'loosen by 1.0 mm', 'tighten by 1.0 mm'],
    ['Deviation after, distance', 'eso 2 Δ', 'exo 2 Δ'],
  ]);
});
