import assert from 'node:assert/strict';
import { test } from 'node:test';
import { nextSteps } from '../../../static/app/screens/patient/next.js';

const [examination, plan, signature] = ['E', 'L', 'S'].map((id) => ({ id }));
const next = (progress, unfinished = false) => nextSteps('P', progress, unfinished).next;

test('each state has one obvious next step', () => {
  assert.deepEqual(next({ state: 'to measure' }), { label: 'Measure', to: '/patients/P/measure' });
  assert.deepEqual(next({ state: 'measured', examination }), { label: 'See findings', to: '/patients/P/findings/E' });
  assert.deepEqual(next({ state: 'planned', examination, plan }), { label: 'Sign the plan', to: '/patients/P/sign/L' });
  assert.deepEqual(next({ state: 'signed', examination, plan, signature }), { label: 'Open the card', to: '/patients/P/card/S' });
});

test('an unfinished examination comes first, whatever was done before', () => {
  assert.deepEqual(next({ state: 'signed', examination, plan, signature }, true), { label: 'Continue measuring', to: '/patients/P/measure' });
});

test('who was measured before can be measured again', () => {
  assert.equal(nextSteps('P', { state: 'signed', examination, plan, signature }, false).also.to, '/patients/P/measure');
  assert.equal(nextSteps('P', { state: 'to measure' }, false).also, undefined);
});
