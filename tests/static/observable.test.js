import assert from 'node:assert/strict';
import { test } from 'node:test';
import { observable } from '../../static/app/observable.js';

test('subscribers are told of each change and of nothing else', () => {
  const seen = [];
  const source = observable(1);
  const stop = source.subscribe(value => seen.push(value));
  source.set(1);
  source.set(2);
  source.set(NaN);
  source.set(NaN);
  stop();
  source.set(3);
  assert.deepEqual(seen, [2, NaN]);
  assert.equal(source.get(), 3);
});

test('a subscriber that stops another while being told disturbs nobody', () => {
  const seen = [];
  const source = observable(0);
  let stopOther = () => {};
  source.subscribe(() => stopOther());
  stopOther = source.subscribe(() => seen.push('other'));
  source.subscribe(() => seen.push('third'));
  source.set(1);
  assert.ok(seen.includes('third'));
});
