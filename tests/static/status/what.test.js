import assert from 'node:assert/strict';
import { test } from 'node:test';
import { WRITERS } from '../../../static/app/planning/rights.js';
import { kindWords, placeOf, whose } from '../../../static/app/screens/status/what.js';

const record = (id, kind, body = {}, patient = 'P') => ({ id, kind, patient, supersedes: [], body });
const ANA = record('P', 'patient', { full_name: 'Ana Vrell', hospital_number: 'HR-1' });
const DAY = record('D2', 'operating_list', { on: '2026-12-01', team: 'Blue team' }, 'D');
const PRACTICE = record('R', 'practice', { decided_by: 'Dr Orsolya Brandt' }, 'R');
const OWN = record('W', 'own_results', { surgeon_name: 'Dr Orsolya Brandt' }, 'W');
const TABLE = record('T', 'dose_table', { name: 'Our own table' }, 'T');
const takenBack = (id, patient) => record('X', 'retraction', { record_id: id, reason: 'A slip.' }, patient);

test('a record leads to where it can be corrected', () => {
  const place = (each) => placeOf([ANA, DAY, PRACTICE], each);
  assert.equal(place(ANA), '/patients/P/edit');
  assert.equal(place(record('E', 'examination')), '/patients/P/measure/E');
  assert.equal(place(record('L', 'plan')), '/patients/P');
  assert.equal(place(record('S', 'signature')), '/patients/P');
  assert.equal(place(record('J', 'join')), '/patients/P');
  assert.equal(place(record('U', 'set_up', { plan_id: 'L' })), '/patients/P/set-up/L');
  assert.equal(place(record('C', 'theatre_check', { signature_id: 'S' })), '/patients/P/checks/S');
  assert.equal(place(record('O', 'operation', { signature_id: 'S' })), '/patients/P/operation/S');
  assert.equal(place(record('A', 'adjustment', { operation_id: 'O' })), '/patients/P/adjust/O');
  assert.equal(place(record('I', 'check_item')), '/settings');
  assert.equal(place(PRACTICE), '/practice');
  assert.equal(place(OWN), '/own-results');
  assert.equal(place(DAY), '/lists/D');
  assert.equal(place(takenBack('P', 'P')), '/patients/P');
  assert.equal(place(takenBack('R', 'R')), '/practice');
});

test('a record says whose it is by name and number', () => {
  assert.equal(whose([ANA], record('E', 'examination')), 'Ana Vrell, HR-1');
  assert.equal(whose([], record('E', 'examination')), 'a patient who is not on this phone');
});

test('what is the clinic’s own is called by its own name, and never by a patient', () => {
  assert.equal(whose([], record('I', 'check_item', { title: 'Bed' })), 'Bed');
  assert.equal(whose([], TABLE), 'Our own table');
  assert.equal(whose([], DAY), 'Blue team, 1 Dec 2026');
  assert.equal(whose([], PRACTICE), 'decided by Dr Orsolya Brandt');
});

test('what is taken back is named with whose it is', () => {
  const examination = record('E', 'examination');
  assert.equal(whose([ANA, examination], takenBack('E', 'P')), 'Examination, Ana Vrell, HR-1');
  assert.equal(whose([DAY], takenBack('D2', 'D')), 'Operating list, Blue team, 1 Dec 2026');
  assert.equal(whose([ANA], takenBack('gone', 'P')), 'Ana Vrell, HR-1');
});

test('every kind that this version writes has words; one that it does not know keeps its own name', () => {
  for (const kind of Object.keys(WRITERS)) assert.match(kindWords(record('X', kind)), /^[A-Z][^_]+$/, kind);
  assert.equal(kindWords(record('X', 'theatre')), 'theatre');
});
