import assert from 'node:assert/strict';
import { test } from 'node:test';
import { chanceWords, mainOutcome, percentWords, reachedBy } from '../../../static/app/parts/expectation/chances.js';

const plain = (text) => text.replaceAll('\u202f', ' ');
const outcome = (range, more = {}) => ({ range, mean_pd: 2, low_pd: -9, high_pd: 13, within_pd: 10, within_percent: 71.2, undercorrected_percent: 20.6, overcorrected_percent: 8.2, ...more });

test('chances are told in whole per cent, and none is told as certain', () => {
  assert.deepEqual([0, 0.2, 71.2, 99.8, 100].map((percent) => plain(percentWords(percent))), ['0 %', 'under 1 %', '71 %', 'over 99 %', '100 %']);
  assert.equal(plain(chanceWords(outcome('distance'))), 'Within 10 Δ of straight 71 %, undercorrected 21 %, overcorrected 8 %');
});

test('the outcome shown first is the one that the plan aims at', () => {
  const prediction = { distance: outcome('distance'), near: outcome('near'), steps: [] };
  assert.equal(mainOutcome(prediction, 'near').range, 'near');
  assert.equal(mainOutcome(prediction, 'after patching').range, 'distance');
  assert.equal(mainOutcome({ ...prediction, near: null }, 'near').range, 'distance');
  assert.equal(mainOutcome(null, 'distance'), null);
});

test('the scale reaches the ends of the interval where the engine predicts one', () => {
  assert.deepEqual(reachedBy({ expected_residual_pd: 2 }), [2]);
  assert.deepEqual(reachedBy({ expected_residual_pd: 2, prediction: { distance: outcome('distance'), near: null, steps: [] } }), [2, -9, 13]);
  assert.deepEqual(reachedBy({ expected_residual_pd: 40, answers: 'vertical' }), []);
});
