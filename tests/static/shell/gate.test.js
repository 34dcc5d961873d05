import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gate, isInside } from '../../../static/app/shell/gate.js';

const at = (phase, login = 'unknown') => ({ phase, login });

for (const [phase, door] of [['signed-out', '/sign-in'], ['choose-clinic', '/sign-in'], ['no-secret', '/secret'], ['locked', '/unlock']]) {
  test(`while ${phase}, every route leads to ${door}`, () => {
    for (const path of ['/', '/patients', '/patients/p/card/s', '/settings', '/nowhere']) assert.equal(gate(at(phase), path), door);
    assert.equal(gate(at(phase), door), door);
  });
}

test('an open session may be anywhere inside', () => {
  assert.equal(gate(at('open'), '/patients/p/measure'), '/patients/p/measure');
});

test('an open session leaves the doors for where the person was going, or the patients', () => {
  for (const path of ['/', '/unlock', '/secret']) {
    assert.equal(gate(at('open'), path, '/patients/p'), '/patients/p');
    assert.equal(gate(at('open'), path), '/patients');
  }
  assert.equal(gate(at('open', 'signed-in'), '/sign-in', '/status'), '/status');
});

test('an expired login can be renewed from an open and from a locked session', () => {
  assert.equal(gate(at('open', 'expired'), '/sign-in'), '/sign-in');
  assert.equal(gate(at('locked', 'expired'), '/sign-in'), '/sign-in');
  assert.equal(gate(at('locked', 'signed-in'), '/sign-in'), '/unlock');
});

test('the doors are not a place to come back to', () => {
  assert.deepEqual(['/', '/unlock', '/secret', '/sign-in', '/status'].map(isInside), [false, false, false, false, true]);
});
