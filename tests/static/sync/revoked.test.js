/** A phone that was revoked: through the real doors of store, session and sync; each test goes on where the one before stopped. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clinic, unreachable } from '../support/clinic.mjs';
import { site } from '../support/page.mjs';
import { openPhone, PATIENT, savePatient, SECRET } from '../support/phone.mjs';
import { drain } from '../../../static/app/sync/drain.js';
import { ServerFault } from '../../../static/app/session/server.js';
import { becomeAnotherDevice, openSession, session, setSecret, signIn } from '../../../static/app/session/session.js';
import { device, drafts, ledger, records, saveRecord } from '../../../static/app/store/store.js';
import { startSync, syncNow, syncState } from '../../../static/app/sync/sync.js';

const noLocks = { locks: null };
const person = { username: 'noor', password: 'a good password' };

/** A phone that has been in use, and was revoked since. */
async function revokedPhone() {
  const server = clinic();
  const phone = await openPhone();
  await savePatient(phone, 'Ilse');
  await drain(phone, server, noLocks);
  server.revoke(phone.device);
  return { server, phone };
}

test('a revoked phone sends what waits, says that it was the last, and then has to go', async () => {
  const { server, phone } = await revokedPhone();
  await savePatient(phone, 'Bram');
  const lasts = [];
  server.before = (what, body) => what === 'push' && lasts.push([body.records.length, body.last ?? false]);
  assert.deepEqual(await drain(phone, server, noLocks).then(({ end, problem }) => [end, problem.code]), ['wipe', 'device_revoked']);
  assert.deepEqual(lasts, [[2, false], [0, true]]);
  assert.equal(server.records.length, 4);
  assert.ok(server.closed.has(phone.device));
});

test('one with nothing to send learns of it by its pull, and says its last', async () => {
  const { server, phone } = await revokedPhone();
  assert.equal((await drain(phone, server, noLocks)).end, 'wipe');
  assert.ok(server.closed.has(phone.device));
});

test('while something is refused for now the last is not said, and nothing goes', async () => {
  const { server, phone } = await revokedPhone();
  await savePatient(phone, 'Bram');
  server.judge = () => ({ code: 'server_fault', text: 'Stumbled.', retryable: true });
  assert.deepEqual(await drain(phone, server, noLocks).then(({ end, problem }) => [end, problem.code]), ['later', 'device_revoked']);
  assert.equal(phone.outbox.get().length, 2);
  assert.ok(!server.closed.has(phone.device));
  server.judge = () => null;
  assert.equal((await drain(phone, server, noLocks)).end, 'wipe');
  assert.equal(server.records.length, 4);
});

test('what the clinic had refused is tried once more before the last', async () => {
  const { server, phone } = await revokedPhone();
  server.revoked.clear();
  server.judge = () => ({ code: 'out_of_range', text: 'Beyond 150.' });
  await phone.save('patient', { body: PATIENT });
  await drain(phone, server, noLocks);
  server.revoke(phone.device);
  server.judge = () => null;
  assert.equal((await drain(phone, server, noLocks)).end, 'wipe');
  assert.equal(server.records.length, 3);
});

test('a lost answer to the last is repaired by the next try, which is told that the device is closed', async () => {
  const { server, phone } = await revokedPhone();
  server.after = what => {
    if (what === 'push') throw unreachable();
  };
  assert.equal((await drain(phone, server, noLocks)).end, 'later');
  assert.deepEqual(await drain(phone, server, noLocks).then(({ end, problem }) => [end, problem.code]), ['wipe', 'device_closed']);
});

for (const [status, code] of [[401, 'not_authenticated'], [403, 'device_unknown'], [403, 'permission_denied'], [404, 'clinic_unknown'], [503, 'unavailable']]) {
  test(`${status} ${code} never wipes, a revoked phone neither`, async () => {
    const { server, phone } = await revokedPhone();
    await savePatient(phone, 'Bram');
    server.before = () => {
      throw new ServerFault(status, { code, text: 'Told.' });
    };
    assert.notEqual((await drain(phone, server, noLocks)).end, 'wipe');
    assert.equal(phone.records.get().length, 4);
  });
}

test('the store of the person goes, and the phone says so until somebody signs in', async () => {
  await openSession();
  startSync();
  await signIn(person);
  await setSecret(SECRET);
  await saveRecord('patient', { body: PATIENT });
  await syncNow();
  const { name } = ledger.get();
  site.online = false;
  await saveRecord('patient', { body: PATIENT });
  drafts.keep('patient', { full_name: 'half a name' });
  site.online = true;
  site.revoke(ledger.get().device);
  await syncNow();
  assert.equal(site.records.length, 2);
  assert.deepEqual([session.get().phase, records.get(), await device.get('account'), syncState.get().error], ['signed-out', [], null, null]);
  const { name: who, sent, lost } = session.get().emptied;
  assert.deepEqual([who, sent, lost], ['noor', true, '1 draft']);
  assert.deepEqual((await indexedDB.databases()).filter(each => each.name === name), []);
});

test('signing in again is refused for good, and the phone stays empty', async () => {
  await assert.rejects(signIn(person), { code: 'device_closed' });
  assert.deepEqual([session.get().phase, session.get().emptied.sent], ['signed-out', false]);
});

test('as another device, which is a deliberate step, it can be used again, and begins empty', async () => {
  const before = (await device.get('device')).id;
  await becomeAnotherDevice();
  assert.equal(session.get().emptied, null);
  await signIn(person);
  await setSecret(SECRET);
  assert.notEqual(ledger.get().device, before);
  await syncNow();
  assert.equal(records.get().length, 2);
});

test('a device whose time is over is wiped with what it never sent, and says how much', async () => {
  site.online = false;
  await saveRecord('patient', { body: PATIENT });
  site.close(ledger.get().device);
  site.online = true;
  await syncNow();
  const { sent, lost } = session.get().emptied;
  assert.deepEqual([session.get().phase, sent, lost], ['signed-out', false, '1 record']);
});
