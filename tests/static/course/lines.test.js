import assert from 'node:assert/strict';
import { test } from 'node:test';
import { columnsOf, rowsOf } from '../../../static/app/screens/course/lines.js';

const EMPTY = { before_pd: null, expected: null, points: [] };
const point = (/** @type {string} */ at, /** @type {string} */ on, /** @type {number} */ days_after, /** @type {number} */ value_pd, /** @type {any} */ more = {}) =>
  ({ at, on, days_after, value_pd, limits_pd: null, is_inside: true, other_correction: false, ...more });
const DISTANCE = {
  before_pd: 40,
  expected: { mean_pd: 0, low_pd: -15.2, high_pd: 15.2 },
  points: [
    point('After adjustment', '2026-11-25', 0, -2),
    point('Before adjustment', '2026-11-25', 0, -12),
    point('Week 1', '2026-12-02', 7, -25, { limits_pd: 7.3, is_inside: false, other_correction: true }),
  ],
};
const course = (/** @type {any} */ more = {}) =>
  /** @type {any} */ ({ horizontal: { distance: DISTANCE, near: EMPTY }, vertical: { distance: EMPTY, near: EMPTY }, visits: [{ visit: 'Day 1', seen_on: '2026-11-26', days_after: 1 }, { visit: 'Week 1', seen_on: '2026-12-02', days_after: 7 }], ...more });

test('every time has its line in order: the adjustment before and after, and a visit at which nothing was measured', () => {
  assert.deepEqual(rowsOf(course()).map(({ at, day }) => [at, day]), [
    ['Before surgery', ''],
    ['Expected', ''],
    ['Before adjustment', 'day 0'],
    ['After adjustment', 'day 0'],
    ['Day 1', 'day 1'],
    ['Week 1', 'day 7'],
  ]);
});

test('a direction is a word, and what lies outside is said in words', () => {
  const [before, expected, , , nothing, outside] = rowsOf(course()).map(({ cells }) => cells[0]);
  const plain = (/** @type {string} */ text) => text.replaceAll('\u202f', ' ');
  assert.deepEqual([before.words, expected.words, expected.aside].map(plain), ['eso 40 Δ', 'none', 'exo 15.2 Δ to eso 15.2 Δ']);
  assert.deepEqual([nothing.words, plain(outside.words), plain(outside.aside)], ['–', 'exo 25 Δ', '± 7.3 Δ, outside what was expected, other correction']);
});

test('vertical columns are there only where something is told of them', () => {
  assert.deepEqual(columnsOf(course()).map(({ title }) => title), ['Distance', 'Near']);
  const vertical = { distance: { ...EMPTY, points: [point('Week 1', '2026-12-02', 7, -6)] }, near: EMPTY };
  assert.deepEqual(columnsOf(course({ vertical })).map(({ title }) => title), ['Distance', 'Near', 'Vertical, distance']);
  assert.match(rowsOf(course({ vertical })).at(-1)?.cells[2].words ?? '', /^left hyper 6/);
});
