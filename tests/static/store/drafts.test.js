import assert from 'node:assert/strict';
import { test } from 'node:test';
import { stash } from '../../../static/app/store/stash.js';
import { openPhone, phone, rawText, SECRET } from '../support/phone.mjs';
import { within } from '../support/within.mjs';

const wait = ms => new Promise(resolve => setTimeout(resolve, ms));

/** As sessionStorage, which outlives a reload of one tab. */
function tabStorage() {
  const kept = new Map();
  return { getItem: key => kept.get(key) ?? null, setItem: (key, value) => kept.set(key, value), removeItem: key => kept.delete(key) };
}

test('what was typed comes back after the app was killed a moment later', async () => {
  const first = await openPhone();
  first.drafts.keep('examination/p', { readings: [{ gaze: 'primary', horizontal_pd: 40 }] });
  await within(async () => {
    const second = await openPhone({ place: first.place_ });
    try {
      assert.deepEqual(second.drafts.get('examination/p'), { readings: [{ gaze: 'primary', horizontal_pd: 40 }] });
      assert.deepEqual(second.drafts.names(), ['examination/p']);
    } finally {
      second.close();
    }
  });
  first.close();
});

test('a stream of changes is written at least every 300 ms, not only after it ends', async () => {
  const ledger = await openPhone();
  const other = await openPhone({ place: ledger.place_ });
  let count = 0;
  await within(async () => {
    ledger.drafts.keep('examination/p', { count: (count += 1) });
    await wait(50);
    await other.lock();
    await other.unlock(SECRET);
    assert.ok(other.drafts.get('examination/p')?.count > 1);
  });
});

test('hiding the page writes at once, and the last value wins', async () => {
  const ledger = await openPhone();
  ledger.drafts.keep('a', 1);
  ledger.drafts.flush();
  ledger.drafts.keep('a', 2);
  await ledger.drafts.flush();
  ledger.close();
  assert.equal((await openPhone({ place: ledger.place_ })).drafts.get('a'), 2);
});

test('a dropped draft does not come back', async () => {
  const ledger = await openPhone();
  ledger.drafts.keep('a', 1);
  await ledger.drafts.flush();
  ledger.drafts.drop('a');
  await ledger.drafts.flush();
  ledger.close();
  assert.deepEqual((await openPhone({ place: ledger.place_ })).drafts.names(), []);
});

test('locking keeps the drafts, and shows none', async () => {
  const ledger = await openPhone();
  ledger.drafts.keep('a', 1);
  await ledger.lock();
  assert.equal(ledger.drafts.get('a'), undefined);
  await ledger.unlock(SECRET);
  assert.equal(ledger.drafts.get('a'), 1);
});

test('a draft that the storage would not take outlives the lock and the reload, sealed', async t => {
  globalThis.sessionStorage = tabStorage();
  t.after(() => delete globalThis.sessionStorage);
  const problems = [];
  const ledger = phone({ onProblem: error => problems.push(error.code) });
  await ledger.setSecret(SECRET);
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function () {
    throw new DOMException('Connection lost', 'UnknownError');
  };
  ledger.drafts.keep('a', 'typed in vain?');
  await assert.rejects(ledger.drafts.flush(), { code: 'storage_lost' });
  await ledger.lock();
  ledger.close();
  IDBObjectStore.prototype.put = put;
  assert.ok(problems.includes('storage_lost'));
  assert.ok(!JSON.stringify(stash(`drafts ${ledger.name}`).recall()).includes('vain'));

  const again = await openPhone({ place: ledger.place_ });
  assert.equal(again.drafts.get('a'), 'typed in vain?');
  assert.deepEqual(stash(`drafts ${ledger.name}`).recall(), []);
});

test('a draft whose write is under way while it is saved does not come back', async t => {
  const ledger = await openPhone();
  const encrypt = crypto.subtle.encrypt.bind(crypto.subtle);
  t.mock.method(crypto.subtle, 'encrypt', async (how, key, plain) => {
    const isDraft = new TextDecoder().decode(how.additionalData).startsWith('drafts:');
    if (isDraft) await wait(50);
    return encrypt(how, key, plain);
  });
  ledger.drafts.keep('patient/new', { full_name: 'Ilse' });
  const writing = ledger.drafts.flush();
  await wait(5);
  await ledger.save('patient', { body: { schema: 1 }, draft: 'patient/new' });
  await writing;
  await ledger.drafts.flush();
  assert.equal(await ledger.drafts.count(), 0);
});

test('a draft that could not be written and was then saved does not come back', async () => {
  const ledger = await openPhone();
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function () {
    throw new DOMException('full', 'QuotaExceededError');
  };
  ledger.drafts.keep('patient/new', { full_name: 'Ilse' });
  await assert.rejects(ledger.drafts.flush(), { code: 'storage_full' });
  IDBObjectStore.prototype.put = put;
  await ledger.save('patient', { body: { schema: 1 }, draft: 'patient/new' });
  await ledger.drafts.flush();
  assert.equal(await ledger.drafts.count(), 0);
});

test('what is kept because it takes long to make outlives a restart, sealed, and is no unsent work', async () => {
  const first = await openPhone();
  first.kept.keep('card/s', { full_name: 'Vantongeren' });
  await first.kept.flush();
  assert.deepEqual(await first.unsent(), { records: 0, drafts: 0 });
  assert.ok(!(await rawText(first.name)).includes('Vantongeren'));
  first.close();
  const second = await openPhone({ place: first.place_ });
  assert.deepEqual(second.kept.get('card/s'), { full_name: 'Vantongeren' });
  await second.lock();
  assert.equal(second.kept.get('card/s'), undefined);
});
