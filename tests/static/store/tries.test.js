/** A phone without room opens what it holds, and guessing is no cheaper there than elsewhere. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openPhone, phone, savePatient, SECRET } from '../support/phone.mjs';

const WRONG = '739164';
const { put } = IDBObjectStore.prototype;

/** The small storage beside the databases; `room: false` takes nothing either. */
function small(t, { room = true } = {}) {
  const kept = new Map();
  const setItem = (key, value) => {
    if (!room) throw new DOMException('no room', 'QuotaExceededError');
    kept.set(key, value);
  };
  const before = Object.getOwnPropertyDescriptor(globalThis, 'localStorage');
  Object.defineProperty(globalThis, 'localStorage', {
    value: { getItem: key => kept.get(key) ?? null, setItem, removeItem: key => kept.delete(key) }, configurable: true,
  });
  t.after(() => (before ? Object.defineProperty(globalThis, 'localStorage', before) : delete globalThis.localStorage));
  return kept;
}

function fill(t) {
  IDBObjectStore.prototype.put = () => {
    throw new DOMException('no room', 'QuotaExceededError');
  };
  const makeRoom = () => Object.assign(IDBObjectStore.prototype, { put });
  t.after(makeRoom);
  return makeRoom;
}

async function locked(now) {
  const ledger = await openPhone();
  await savePatient(ledger);
  ledger.close();
  return phone({ place: ledger.place_, device: ledger.device, now });
}

test('without room the secret opens what is here, and leaves no count behind', async t => {
  const kept = small(t);
  const ledger = await locked();
  fill(t);
  await ledger.unlock(SECRET);
  assert.equal(ledger.records.get().length, 2);
  assert.deepEqual([...kept], []);
});

test('without room wrong tries are counted, through a restart too, and make wait as anywhere', async t => {
  small(t);
  const now = () => 1_000_000;
  const ledger = await locked(now);
  const makeRoom = fill(t);
  for (let wrong = 0; wrong < 3; wrong += 1) await assert.rejects(ledger.unlock(WRONG), { code: 'wrong_secret' });
  await assert.rejects(ledger.unlock(SECRET), { code: 'too_many_tries' });
  ledger.close();
  const again = phone({ place: ledger.place_, device: ledger.device, now });
  assert.equal(await again.waitUntil(), now() + 5_000);
  makeRoom();
  await assert.rejects(again.unlock(SECRET), { code: 'too_many_tries' });
  again.close();
  const later = phone({ place: ledger.place_, device: ledger.device, now: () => now() + 5_000 });
  await later.unlock(SECRET);
  assert.equal(await later.waitUntil(), 0);
});

test('what was counted in the database holds when there is no room any more', async t => {
  small(t);
  const now = () => 1_000_000;
  const ledger = await locked(now);
  for (let wrong = 0; wrong < 2; wrong += 1) await assert.rejects(ledger.unlock(WRONG), { code: 'wrong_secret' });
  fill(t);
  await assert.rejects(ledger.unlock(WRONG), { code: 'wrong_secret' });
  await assert.rejects(ledger.unlock(SECRET), { code: 'too_many_tries' });
});

test('where a try can be counted nowhere, none is made', async t => {
  small(t, { room: false });
  const ledger = await locked();
  fill(t);
  await assert.rejects(ledger.unlock(SECRET), { code: 'storage_full' });
});

test('a count beside a database goes with it', async t => {
  const kept = small(t);
  const ledger = await locked();
  const makeRoom = fill(t);
  await assert.rejects(ledger.unlock(WRONG), { code: 'wrong_secret' });
  assert.equal(kept.size, 1);
  makeRoom();
  await ledger.erase();
  assert.equal(kept.size, 0);
});
