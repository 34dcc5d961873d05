import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cardState, checksOf, nextPhase, phasesOf } from '../../../static/app/planning/theatre-checks.js';

const CARD = 'signature-1';
let count = 0;

/** @param {string} phase @param {string} outcome @param {string} [signature] */
const check = (phase, outcome, signature = CARD) => /** @type {any} */ ({ id: `check-${++count}`, kind: 'theatre_check', body: { signature_id: signature, phase, outcome } });

test('before anything is checked the sign in comes next and nothing is passed', () => {
  const phases = phasesOf([], CARD);

  assert.deepEqual(phases.map(({ phase }) => phase), ['sign in', 'time out', 'sign out']);
  assert.deepEqual(phases.map(({ passed }) => passed), [null, null, null]);
  assert.equal(nextPhase(phases)?.phase, 'sign in');
});

test('a stop does not pass a phase, and the check after it may', () => {
  const stopped = check('sign in', 'stopped');
  assert.equal(nextPhase(phasesOf([stopped], CARD))?.phase, 'sign in');

  const passed = check('sign in', 'passed');
  const [signIn, timeOut] = phasesOf([stopped, passed], CARD);
  assert.deepEqual([signIn.passed, signIn.stops], [passed, [stopped]]);
  assert.deepEqual([timeOut.isNext, timeOut.after], [true, passed]);
});

test('no phase comes next before the one before it has passed', () => {
  const phases = phasesOf([check('time out', 'passed')], CARD);

  assert.deepEqual(phases.map(({ isNext }) => isNext), [true, false, false]);
});

test('when all three are passed nothing comes next', () => {
  assert.equal(nextPhase(phasesOf(['sign in', 'time out', 'sign out'].map((phase) => check(phase, 'passed')), CARD)), undefined);
});

test('the checks of another card count nothing', () => {
  assert.deepEqual(checksOf([check('sign in', 'passed', 'signature-2')], CARD), []);
});

test('a card taken back is called so, whatever replaced its plan', () => {
  const standing = /** @type {any} */ ({ retraction: null, successors: [], examinationChanged: true, patientChanged: true });

  assert.equal(cardState(standing), 'current');
  assert.equal(cardState({ ...standing, successors: [{}] }), 'replaced');
  assert.equal(cardState({ ...standing, retraction: {}, successors: [{}] }), 'taken back');
});
