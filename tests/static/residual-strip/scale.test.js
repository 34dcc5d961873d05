import assert from 'node:assert/strict';
import { test } from 'node:test';
import { WIDTH, placeOf, reachOf } from '../../../static/app/parts/residual-strip/scale.js';

test('straight is the middle, exo to the left, eso to the right, and the two mirror each other', () => {
  assert.equal(placeOf(0, 20), WIDTH / 2);
  assert.ok(placeOf(-5, 20) < WIDTH / 2 && placeOf(5, 20) > WIDTH / 2);
  assert.equal(placeOf(5, 20) + placeOf(-5, 20), WIDTH);
});

test('the scale always holds the band and everything compared', () => {
  assert.equal(reachOf([1, -2]), 20);
  for (const pd of [0, 19, 20, 33, -47.5, 150]) {
    const x = placeOf(pd, reachOf([pd]));
    assert.ok(x > 0 && x < WIDTH);
  }
});
