import assert from 'node:assert/strict';
import { test } from 'node:test';
import { UNSIGNED, acknowledge, cautionsLeft, compared, draw, drawAgain, stageOf } from '../../../static/app/screens/sign/signing.js';

const notice = (code, level) => ({ code, level, text: code });
const option = { notices: [notice('first', 'caution'), notice('fyi', 'note'), notice('second', 'caution')] };
const EQUAL = { equal: true, missing: [], unexpected: [] };
const read = acknowledge(acknowledge(UNSIGNED, 'first'), 'second');

test('cautions come one by one, and nothing is drawn before the last is read', () => {
  assert.equal(stageOf(option, UNSIGNED), 'cautions');
  assert.deepEqual(cautionsLeft(option, UNSIGNED).map(({ code }) => code), ['first', 'second']);
  assert.equal(stageOf(option, acknowledge(UNSIGNED, 'first')), 'cautions');
  assert.equal(stageOf(option, read), 'draw');
});

test('the signature opens only on the engine’s word that drawing and plan are equal', () => {
  const drawn = draw(read, { eye: 'right', muscle: 'MR' }, { operation: 'recess' });
  assert.equal(stageOf(option, drawn), 'draw');
  assert.equal(stageOf(option, compared(drawn, { ...EQUAL, equal: false })), 'differs');
  assert.equal(stageOf(option, compared(drawn, EQUAL)), 'sign');
});

test('a change of the drawing closes the signature again', () => {
  const open = compared(draw(read, { eye: 'right', muscle: 'MR' }, { operation: 'recess' }), EQUAL);
  assert.equal(stageOf(option, draw(open, { eye: 'left', muscle: 'MR' }, { operation: 'recess' })), 'draw');
  assert.deepEqual(drawAgain(open).drawn, []);
});

test('a muscle is drawn once, and nothing takes it out', () => {
  const place = { eye: 'right', muscle: 'MR' };
  const twice = draw(draw(read, place, { operation: 'recess' }), place, { operation: 'resect' });
  assert.deepEqual(twice.drawn, [{ ...place, operation: 'resect' }]);
  assert.deepEqual(draw(twice, place, null).drawn, []);
});

test('a code that stands twice is acknowledged once', () => {
  const twice = { notices: [notice('same', 'caution'), notice('same', 'caution')] };
  assert.equal(cautionsLeft(twice, UNSIGNED).length, 1);
  assert.equal(stageOf(twice, acknowledge(UNSIGNED, 'same')), 'draw');
});

test('a tendon that stays in its line leaves no trace, one that is moved is drawn with its direction', () => {
  const place = { eye: 'left', muscle: 'LR' };
  assert.deepEqual(draw(read, place, { operation: 'recess', offset: null }).drawn, [{ ...place, operation: 'recess' }]);
  assert.deepEqual(draw(read, place, { operation: 'recess', offset: 'up' }).drawn, [{ ...place, operation: 'recess', offset: 'up' }]);
});
