import assert from 'node:assert/strict';
import { test } from 'node:test';
import { exportQuestion } from '../../../static/app/auditing/exporting.js';
import { drawShifts } from '../../../static/app/auditing/shifts.js';

/** Fills with these numbers in turn. */
const filler = (numbers) => {
  let place = 0;
  return (array) => array.forEach((_, at) => (array[at] = numbers[place++ % numbers.length]));
};

test('every person gets a shift of 30 to 364 days, either way', () => {
  const drawn = drawShifts(2000);
  assert.equal(drawn.length, 2000);
  assert.ok(drawn.every((days) => Number.isInteger(days) && Math.abs(days) >= 30 && Math.abs(days) <= 364));
  assert.ok(drawn.some((days) => days > 0) && drawn.some((days) => days < 0));
});

test('each shift is as likely as any other: numbers that would favour some are drawn again', () => {
  assert.deepEqual(new Set(drawShifts(670, filler(Array.from({ length: 670 }, (_, at) => at)))).size, 670);
  assert.deepEqual(drawShifts(2, filler([2 ** 32 - 1, 0, 2 ** 32 - 1, 669])), [30, -364]);
});

test('nobody to shift draws nothing', () => {
  assert.deepEqual(drawShifts(0), []);
});

test('operations of one person share a shift, and only numbers tell who is who', () => {
  const counted = [
    { result: { id: 'o1' }, person: 'p-one', bornOn: '2020-01-30' },
    { result: { id: 'o2' }, person: 'p-two', bornOn: null },
    { result: { id: 'o3' }, person: 'p-one', bornOn: '2020-01-30' },
  ];
  const asked = exportQuestion(counted, (count) => Array.from({ length: count }, (_, at) => 100 + at));
  assert.deepEqual(asked.cases.map(({ person }) => person), [0, 1, 0]);
  assert.deepEqual(asked.shifts_days, [100, 101]);
  assert.deepEqual(asked.cases[1], { result: { id: 'o2' }, person: 1, born_on: null });
});
