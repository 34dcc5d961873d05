import assert from 'node:assert/strict';
import { test } from 'node:test';
import { fetchHalf, shareKeys } from '../../../static/app/session/device-keys.js';
import { makeSpare, makeVault, openSpare, openVault, seal, unseal } from '../../../static/app/store/vault.js';
import { clinic, unreachable } from '../support/clinic.mjs';
import { openPhone, phone, rawText, savePatient, SECRET } from '../support/phone.mjs';

const NEXT = '730415';
const quick = { rounds: 10 };
const again = ledger => (ledger.close(), phone({ place: ledger.place_, device: ledger.device }));

test('a spare opens the same keys with its key, and with no other', async () => {
  const { lock, keys } = await makeVault(SECRET, quick);
  const sealed = await seal(keys, 'record:a', 'kept');
  const { spare, key } = await makeSpare(lock, SECRET);
  const next = await openSpare(spare, key, NEXT, quick);
  assert.equal(await unseal(await openVault(next, NEXT), 'record:a', sealed), 'kept');
  await assert.rejects(openSpare(spare, '00'.repeat(32), NEXT, quick), { code: 'recovery_differs' });
  await assert.rejects(openSpare({ ...spare, id: 'another' }, key, NEXT, quick), { code: 'recovery_differs' });
});

test('with a forgotten PIN everything is still there after a sign-in: records, what waits, and drafts', async () => {
  const site = clinic();
  const first = await openPhone();
  await shareKeys(first, site);
  const { patient } = await savePatient(first);
  first.drafts.keep('examination/x', { typed: 'half' });
  await first.lock();

  const ledger = again(first);
  assert.equal(await ledger.canRecover(), true);
  await ledger.renew(await fetchHalf(ledger, site), NEXT);
  assert.equal(ledger.find(patient.id).body.full_name, 'Ilse Vantongeren');
  assert.equal(ledger.outbox.get().length, 2);
  assert.deepEqual(ledger.drafts.get('examination/x'), { typed: 'half' });

  const later = again(ledger);
  await assert.rejects(later.unlock(SECRET), { code: 'wrong_secret' });
  await later.unlock(NEXT);
});

test('wrong tries before it make nobody wait after it', async () => {
  const site = clinic();
  const ledger = await openPhone();
  await shareKeys(ledger, site);
  await ledger.lock();
  for (let tries = 0; tries < 3; tries += 1) await assert.rejects(ledger.unlock('111222'), { code: 'wrong_secret' });
  assert.ok(await ledger.waitUntil());
  await ledger.renew(await fetchHalf(ledger, site), NEXT);
  assert.equal(await ledger.waitUntil(), 0);
});

test('the key that was handed out is replaced by another, which the clinic is told', async () => {
  const site = clinic();
  const ledger = await openPhone();
  await shareKeys(ledger, site);
  const used = site.half;
  await ledger.renew(used, NEXT);
  await shareKeys(ledger, site);
  assert.notEqual(site.half.key_id, used.key_id);
  await assert.rejects(ledger.renew(used, '111222'), { code: 'recovery_differs' });
  await ledger.renew(site.half, '902817');
});

test('until the clinic has answered for the new key the old one still helps', async () => {
  const site = clinic();
  const ledger = await openPhone();
  await shareKeys(ledger, site);
  await ledger.renew(site.half, NEXT);
  // The answer was lost: the clinic may have either.
  await assert.rejects(shareKeys(ledger, { call: async () => Promise.reject(unreachable()) }));
  await ledger.renew(site.half, SECRET);
  const due = await ledger.recoveryDue();
  await ledger.renew(due, NEXT);
});

test('before the clinic has its half, nothing is promised', async () => {
  const ledger = await openPhone();
  assert.equal(await ledger.canRecover(), false);
  await shareKeys(ledger, clinic());
  assert.equal(await ledger.canRecover(), true);
});

test('a phone whose lock is older than this gets its second way at the next unlocking', async () => {
  const first = await openPhone();
  await new Promise((resolve, reject) => {
    const request = indexedDB.open(first.name);
    request.onsuccess = () => {
      const tx = request.result.transaction('meta', 'readwrite');
      for (const key of ['recovery', 'recoveryDue']) tx.objectStore('meta').delete(key);
      tx.oncomplete = () => (request.result.close(), resolve());
    };
    request.onerror = reject;
  });
  const ledger = again(first);
  await ledger.unlock(SECRET);
  await shareKeys(ledger, clinic());
  assert.equal(await ledger.canRecover(), true);
});

test('what is wrong changes nothing: another half, a poor PIN', async () => {
  const site = clinic();
  const ledger = await openPhone();
  await shareKeys(ledger, site);
  await ledger.lock();
  await assert.rejects(ledger.renew({ ...site.half, key: '00'.repeat(32) }, NEXT), { code: 'recovery_differs' });
  await assert.rejects(ledger.renew(site.half, '123456'), { code: 'secret_too_simple' });
  await ledger.unlock(SECRET);
});

test('neither half is of use alone: the phone’s copy holds the key only under the PIN, the clinic has no lock', async () => {
  const site = clinic();
  const ledger = await openPhone();
  const due = await ledger.recoveryDue();
  for (const raw of [await rawText(ledger.name), (await shareKeys(ledger, site), await rawText(ledger.name))]) {
    assert.ok(!raw.includes(due.key));
    assert.ok(!raw.includes(Buffer.from(due.key, 'hex').toString('latin1')));
  }
  assert.deepEqual(Object.keys(site.half), ['key_id', 'key']);
});
