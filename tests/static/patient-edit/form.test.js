import assert from 'node:assert/strict';
import { test } from 'node:test';
import { bodyFrom, EMPTY, missing, typedFrom } from '../../../static/app/screens/patient-edit/form.js';

const TODAY = '2026-11-25';
const WHOLE = { ...EMPTY, full_name: 'Ana Vrell', born_on: '2019-03-04', hospital_number: 'HR-1' };
const faulty = (change) => missing({ ...WHOLE, ...change }, TODAY).map(({ field, code }) => [field, code]);

test('a whole form has nothing missing', () => {
  assert.deepEqual(faulty({}), []);
});

test('each missing entry is named with what is allowed', () => {
  const faults = missing(EMPTY, TODAY);
  assert.deepEqual(faults.map(({ field }) => field), ['full_name', 'born_on', 'hospital_number']);
  for (const { text, allowed } of faults) assert.ok(text && allowed);
});

test('white space is no name', () => {
  assert.deepEqual(faulty({ full_name: '  ' }), [['full_name', 'empty']]);
});

test('a day that no calendar has, and a day to come, are told apart', () => {
  assert.deepEqual(faulty({ born_on: '2023-02-29' }), [['born_on', 'no_such_day']]);
  assert.deepEqual(faulty({ born_on: '-03-04' }), [['born_on', 'no_such_day']]);
  assert.deepEqual(faulty({ born_on: '2026-11-26' }), [['born_on', 'in_future']]);
  assert.deepEqual(faulty({ born_on: TODAY }), []);
});

test('a body carries its schema and no white space around its texts', () => {
  assert.deepEqual(bodyFrom({ ...WHOLE, full_name: ' Ana Vrell ' }), { schema: 1, ...WHOLE });
});

test('a record, an old draft and nothing at all each fill the form', () => {
  assert.deepEqual(typedFrom({ ...WHOLE, schema: 1, later: 'field' }), WHOLE);
  assert.deepEqual(typedFrom({ full_name: 'Ana' }), { ...EMPTY, full_name: 'Ana' });
  assert.deepEqual(typedFrom(undefined), EMPTY);
});
