import assert from 'node:assert/strict';
import { test } from 'node:test';
import { HEIGHT, WIDTH, acrossOf, reachOf, upOf } from '../../../static/app/parts/nine-gaze/scale.js';

test('all gazes share one scale, wide enough for every figure and every interval', () => {
  assert.equal(reachOf([{ gaze: 'primary', horizontal_pd: 12 }]), 20);
  assert.equal(reachOf([{ gaze: 'primary', horizontal_pd: 12 }, { gaze: 'up', horizontal_pd: -41 }]), 50);
  assert.equal(reachOf([{ gaze: 'primary', horizontal_pd: 12, after: { mean_pd: 2, low_pd: -33, high_pd: 20 } }]), 40);
});

test('straight is the middle; eso lies to the right, right hyper up, and both mirror', () => {
  assert.deepEqual([acrossOf(0, 40), upOf(0, 40)], [WIDTH / 2, HEIGHT / 2]);
  assert.ok(acrossOf(10, 40) > WIDTH / 2 && upOf(10, 40) < HEIGHT / 2);
  assert.equal(acrossOf(10, 40) + acrossOf(-10, 40), WIDTH);
  assert.equal(upOf(10, 40) + upOf(-10, 40), HEIGHT);
});

test('a Δ is as long up as across', () => {
  assert.ok(Math.abs(acrossOf(10, 40) - WIDTH / 2 - (HEIGHT / 2 - upOf(10, 40))) < 1e-9);
});

test('nothing is drawn outside its picture', () => {
  for (const pd of [-80, -40, 0, 40, 80]) {
    assert.ok(acrossOf(pd, 80) >= 0 && acrossOf(pd, 80) <= WIDTH);
    assert.ok(upOf(pd, 80) >= 0 && upOf(pd, 80) <= HEIGHT);
  }
});
