import assert from 'node:assert/strict';
import { test } from 'node:test';
import { ageWords, fullMonths } from '../../../static/app/parts/calendar/age.js';

test('an age is told in the unit a clinic uses at that age', () => {
  const born = '2026-01-10';
  const at = (on) => ageWords(born, on);
  assert.equal(at('2026-01-10'), '0 days');
  assert.equal(at('2026-01-11'), '1 day');
  assert.equal(at('2026-02-06'), '27 days');
  assert.equal(at('2026-02-07'), '4 weeks');
  assert.equal(at('2026-04-09'), '12 weeks');
  assert.equal(at('2026-04-10'), '3 months');
  assert.equal(at('2028-01-09'), '23 months');
  assert.equal(at('2028-01-10'), '2 years');
  assert.equal(at('2126-01-10'), '100 years');
});

test('a birthday counts from its own day on, not a day before', () => {
  assert.equal(ageWords('2019-03-04', '2026-03-03'), '6 years');
  assert.equal(ageWords('2019-03-04', '2026-03-04'), '7 years');
});

test('who was born on the 29th of February is a year older on the last day of February', () => {
  assert.equal(ageWords('2012-02-29', '2026-02-27'), '13 years');
  assert.equal(ageWords('2012-02-29', '2026-02-28'), '14 years');
  assert.equal(ageWords('2012-02-29', '2028-02-28'), '15 years');
  assert.equal(ageWords('2012-02-29', '2028-02-29'), '16 years');
});

test('where there is no age to tell, none is told', () => {
  assert.equal(ageWords('2026-05-01', '2026-04-30'), '');
  assert.equal(ageWords('2026-02-30', '2026-04-30'), '');
  assert.equal(ageWords('', '2026-04-30'), '');
  assert.equal(fullMonths('not a date', '2026-04-30'), null);
});

test('full months agree with a count that goes through the calendar month by month', () => {
  const DAY_MS = 86_400_000;
  const iso = (ms) => new Date(ms).toISOString().slice(0, 10);
  const born = Date.UTC(2020, 0, 31);
  let counted = 0;
  for (let ms = born; ms < born + 1500 * DAY_MS; ms += DAY_MS) {
    const day = new Date(ms);
    const last = new Date(Date.UTC(day.getUTCFullYear(), day.getUTCMonth() + 1, 0)).getUTCDate();
    // Born on a 31st: a month is full on the last day of every month.
    if (ms > born && day.getUTCDate() === last) counted += 1;
    assert.equal(fullMonths(iso(born), iso(ms)), counted, iso(ms));
  }
});
