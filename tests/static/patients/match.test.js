import assert from 'node:assert/strict';
import { test } from 'node:test';
import { matches } from '../../../static/app/screens/patients/match.js';

const ZUZANA = { full_name: 'Zuzana Müller-Pillai', born_on: '2012-02-29', hospital_number: 'HR-2048/7' };
const fits = (typed) => matches(ZUZANA, typed);

test('nothing typed fits everyone', () => {
  assert.ok(fits(''));
  assert.ok(fits('   '));
});

test('a name is found by the beginning of any of its parts, in any order, case and accent', () => {
  for (const typed of ['zuz', 'pillai', 'mül', 'MULLER', 'pil zuz', 'müller-pi']) assert.ok(fits(typed), typed);
  for (const typed of ['illai', 'zuzanna', 'zuz abara']) assert.ok(!fits(typed), typed);
});

test('a number is found by any run of its letters and digits, with or without its marks', () => {
  for (const typed of ['2048', 'hr2048', 'HR-2048', '48/7', '487']) assert.ok(fits(typed), typed);
  assert.ok(!fits('2049'));
});

test('marks alone find nobody by number', () => {
  assert.ok(!fits('//'));
});

test('a birth date is found as it is written, day before month', () => {
  for (const typed of ['29.2.2012', '29/02/2012', '29-2', '29.2.', '2012-02-29', '2012-02', '2012', 'feb', '29.2.20']) assert.ok(fits(typed), typed);
  for (const typed of ['2.29.2012', '28.2.2012', '2012-03', '29.2.2013', 'mar']) assert.ok(!fits(typed), typed);
});

test('every word must fit', () => {
  assert.ok(fits('zuzana 2012'));
  assert.ok(!fits('zuzana 2011'));
});
