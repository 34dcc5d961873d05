import assert from 'node:assert/strict';
import { test } from 'node:test';
import { kindWords, placeOf, whose } from '../../../static/app/screens/status/what.js';

const record = (id, kind, body = {}) => ({ id, kind, patient: 'P', supersedes: [], body });
const ANA = record('P', 'patient', { full_name: 'Ana Vrell', hospital_number: 'HR-1' });

test('a record leads to where it can be corrected', () => {
  assert.equal(placeOf(ANA), '/patients/P/edit');
  assert.equal(placeOf(record('E', 'examination')), '/patients/P/measure/E');
  assert.equal(placeOf(record('L', 'plan')), '/patients/P');
  assert.equal(placeOf(record('S', 'signature')), '/patients/P');
  assert.equal(placeOf(record('C', 'theatre_check', { signature_id: 'S' })), '/patients/P/checks/S');
  assert.equal(placeOf(record('I', 'check_item')), '/settings');
});

test('a record says whose it is by name and number', () => {
  assert.equal(whose([ANA], record('E', 'examination')), 'Ana Vrell, HR-1');
  assert.equal(whose([], record('E', 'examination')), 'a patient who is not on this phone');
  assert.equal(whose([], record('I', 'check_item', { title: 'Bed' })), 'Bed');
});

test('a kind that this version does not know keeps its own name', () => {
  assert.equal(kindWords(record('X', 'theatre')), 'theatre');
});
