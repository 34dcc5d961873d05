import assert from 'node:assert/strict';
import { test } from 'node:test';
import { nextSteps } from '../../../static/app/screens/patient/next.js';

const [examination, plan, signature] = ['E', 'L', 'S'].map((id) => ({ id }));
const all = () => true;
const next = (progress, unfinished = false, may = all) => nextSteps('P', progress, { unfinished, may }).next;

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
  const also = (progress) => nextSteps('P', progress, { unfinished: false, may: all }).also;
  assert.equal(also({ state: 'signed', examination, plan, signature }).to, '/patients/P/measure');
  assert.equal(also({ state: 'to measure' }), undefined);
});

test('nobody is led to what the clinic would refuse of them', () => {
  const may = () => false;
  assert.equal(next({ state: 'to measure' }, true, may), undefined);
  assert.equal(next({ state: 'planned', plan }, false, may).label, 'See the plan');
  assert.deepEqual(nextSteps('P', { state: 'signed', plan, signature }, { unfinished: false, may }), {
    next: { label: 'Open the card', to: '/patients/P/card/S' },
    also: undefined,
  });
});

test('after the operation a visit is the next step, for whoever may record one', () => {
  const signed = { state: 'signed', examination, plan, signature };
  const at = { unfinished: false, visit: { to: '/visit', isBegun: false }, may: all };
  assert.deepEqual(nextSteps('P', signed, at), { next: { label: 'Record a visit', to: '/visit' }, also: { label: 'Measure again', to: '/patients/P/measure' } });
  assert.equal(nextSteps('P', signed, { ...at, visit: { to: '/visit', isBegun: true } }).next?.label, 'Continue the visit');
  assert.equal(nextSteps('P', signed, { ...at, unfinished: true }).next?.label, 'Continue measuring');
  assert.equal(nextSteps('P', signed, { ...at, may: (kind) => kind !== 'follow_up' }).next?.label, 'Open the card');
});
