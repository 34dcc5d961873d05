import assert from 'node:assert/strict';
import { test } from 'node:test';
import { askProtection, isNearlyFull, noteStorage, recallProtection, storageState } from '../../../static/app/store/protection.js';

/** A browser that promises nothing until `granted`, and counts how often it is asked. */
function browser({ granted = false, state = 'prompt' } = {}) {
  const self = { granted, state, asked: 0, persisted: false };
  const storage = {
    persisted: async () => self.persisted,
    persist: async () => {
      self.asked += 1;
      return (self.persisted = self.granted);
    },
    estimate: async () => ({ usage: 5, quota: 50 }),
  };
  Object.defineProperty(globalThis, 'navigator', { configurable: true, value: { storage, permissions: { query: async () => ({ state: self.state }) } } });
  return self;
}

/** What this phone keeps of itself, as a newly opened app finds it. */
function phone() {
  const kept = new Map();
  noteStorage({ asked: null, persisted: false, usage: null, quota: null });
  return { get: async name => kept.get(name), set: async (name, value) => void kept.set(name, value) };
}

test('the browser is asked to keep what is stored at the first save, and not before or again', async () => {
  const asked = browser();
  const device = phone();
  await recallProtection(device);
  assert.equal(asked.asked, 0);
  await askProtection(device);
  await askProtection(device);
  await recallProtection(device);
  assert.equal(asked.asked, 1);
  assert.equal(storageState.get().persisted, false);
});

test('a promise that was refused is asked for again when the browser would give it, and is then told', async () => {
  const told = browser();
  const device = phone();
  await askProtection(device);
  Object.assign(told, { granted: true, state: 'granted' });
  await recallProtection(device);
  assert.equal(told.asked, 2);
  assert.equal(storageState.get().persisted, true);
  await recallProtection(device);
  assert.equal(told.asked, 2);
});

test('what the browser promises now is told, whatever it said before', async () => {
  const told = browser({ granted: true });
  const device = phone();
  await askProtection(device);
  assert.equal(storageState.get().persisted, true);
  told.persisted = false;
  await recallProtection(device);
  assert.equal(storageState.get().persisted, false);
});

test('a browser that knows no promises is not asked, and says how much is used', async () => {
  browser();
  Object.defineProperty(globalThis, 'navigator', { configurable: true, value: { storage: { estimate: async () => ({ usage: 5, quota: 50 }) } } });
  const device = phone();
  await askProtection(device);
  await recallProtection(device);
  assert.deepEqual([storageState.get().persisted, storageState.get().usage], [false, 5]);
});

test('storage is nearly full below a twentieth or 20 MB of room, and never where the browser does not say', () => {
  for (const [usage, quota, nearly] of [
    [0, 1e9, false],
    [949e6, 1e9, false],
    [951e6, 1e9, true],
    [79e6, 100e6, false],
    [81e6, 100e6, true],
    [1e9, 1e9, true],
    [null, null, false],
    [5, null, false],
    [0, 0, false],
  ]) assert.equal(isNearlyFull({ usage, quota }), nearly, `${usage} of ${quota}`);
});
