import assert from 'node:assert/strict';
import { test } from 'node:test';
import { mainReadings } from '../../../static/app/screens/patient/readings.js';

const reading = (gaze, range, correction, horizontal_pd) => ({ gaze, range, correction, horizontal_pd });

test('the primary position stands for the case: distance before near, with correction first', () => {
  const told = mainReadings([
    reading('up', 'distance', 'with', 5),
    reading('primary', 'near', 'with', 30),
    reading('primary', 'distance', 'without', -25),
    reading('primary', 'distance', 'with', 20),
  ]);
  assert.deepEqual(told.map(({ label, words }) => [label, words.replace(/\u202f/g, ' ')]), [
    ['Distance, with correction', 'eso 20 Δ'],
    ['Distance, without correction', 'exo 25 Δ'],
    ['Near, with correction', 'eso 30 Δ'],
  ]);
});
