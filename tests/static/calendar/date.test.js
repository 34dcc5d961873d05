import assert from 'node:assert/strict';
import { test } from 'node:test';
import { dateParts, dateWords, daysIn, shortDateWords, today } from '../../../static/app/parts/calendar/date.js';

test('a date is told with its month spelt', () => {
  assert.equal(dateWords('2019-03-04'), '4 March 2019');
  assert.equal(shortDateWords('2019-12-31'), '31 Dec 2019');
});

test('what is no date is shown as it stands rather than as another date', () => {
  assert.equal(dateWords('2019-13-04'), '2019-13-04');
  assert.equal(dateWords('4 March'), '4 March');
  assert.equal(dateWords(undefined), '');
});

test('only days that a calendar has are dates', () => {
  assert.deepEqual(dateParts('2024-02-29'), { year: 2024, month: 2, day: 29 });
  for (const wrong of ['2023-02-29', '1900-02-29', '2026-04-31', '2026-00-10', '2026-01-00', '2026-1-1', '', null]) {
    assert.equal(dateParts(wrong), null, String(wrong));
  }
});

test('months have the length that the calendar gives them, leap years by the rule of 4, 100 and 400', () => {
  assert.deepEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12].map((month) => daysIn(2026, month)), [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]);
  assert.deepEqual([1900, 2000, 2024, 2100].map((year) => daysIn(year, 2)), [28, 29, 29, 28]);
});

test('today is the day at this place, not the day in Greenwich', () => {
  assert.equal(today(new Date(2026, 10, 25, 0, 5)), '2026-11-25');
  assert.equal(today(new Date(2026, 10, 25, 23, 55)), '2026-11-25');
});
