/** One phone's day, through the real doors of store, session and sync; each test goes on where the one before stopped. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { happen, site } from '../support/page.mjs';
import { PATIENT, SECRET } from '../support/phone.mjs';
import { ServerFault } from '../../../static/app/session/server.js';
import { lock, openSession, session, signIn, signOut, setSecret, unlock } from '../../../static/app/session/session.js';
import { storageState } from '../../../static/app/store/protection.js';
import { drafts, outbox, records, retry, saveRecord, stateOf } from '../../../static/app/store/store.js';
import { startSync, syncNow, syncState } from '../../../static/app/sync/sync.js';

const person = { username: 'noor', password: 'a good password' };
const save = name => saveRecord('patient', { body: { ...PATIENT, full_name: name } });

async function until(fits, limit_ms = 20_000) {
  const end = Date.now() + limit_ms;
  while (!fits(syncState.get())) {
    assert.ok(Date.now() < end, `still ${JSON.stringify(syncState.get())}`);
    await new Promise(resolve => setTimeout(resolve, 10));
  }
}

test('before anybody is here nothing is sent', async () => {
  await openSession();
  startSync();
  await syncNow();
  assert.deepEqual([session.get().phase, site.calls, syncState.get().lastHeard], ['signed-out', [], null]);
});

test('opening fetches by itself, and says when it heard', async () => {
  await signIn(person);
  await setSecret(SECRET);
  await until(({ lastHeard, complete, busy }) => lastHeard && complete && !busy);
  assert.equal(syncState.get().error, null);
});

test('a save is sent by itself, and the browser is asked to keep the data', async () => {
  const record = await save('Ilse');
  assert.equal(stateOf(record.id), 'waiting');
  await until(({ waiting, busy }) => !waiting && !busy);
  assert.deepEqual([stateOf(record.id), site.records.length], ['sent', 1]);
  assert.ok(storageState.get().asked);
});

test('offline the work goes on, and the state says what waits since when', async () => {
  site.online = false;
  const record = await save('Bram');
  await save('Wout');
  await until(({ error, busy }) => error?.code === 'unreachable' && !busy);
  const { waiting, oldestWaitingAt, attention } = syncState.get();
  assert.deepEqual([waiting, attention, oldestWaitingAt], [2, 0, record.recorded_at]);
  assert.equal(records.get().length, 3);
});

test('the network comes back, and everything goes', async () => {
  site.online = true;
  happen('online');
  await until(({ waiting, error, busy }) => !waiting && !error && !busy);
  assert.equal(site.records.length, 3);
});

test('a login that expires asks for a new one, locks nothing, and then everything goes', async () => {
  site.who = null;
  await save('Fien');
  await until(({ error, busy }) => error?.code === 'not_authenticated' && !busy);
  assert.deepEqual([session.get().phase, session.get().login, syncState.get().waiting], ['open', 'expired', 1]);
  await signIn(person);
  await until(({ waiting, error, busy }) => !waiting && !error && !busy);
  assert.deepEqual([session.get().phase, session.get().login, site.records.length], ['open', 'signed-in', 4]);
});

test('what the clinic refuses for good is counted apart, with its reason, until it is sent again', async () => {
  site.judge = () => ({ code: 'out_of_range', text: 'Beyond 150.', field: 'body' });
  const record = await save('Jef');
  await until(({ attention, busy }) => attention === 1 && !busy);
  assert.deepEqual([stateOf(record.id), syncState.get().waiting, outbox.get()[0].text], ['attention', 0, 'Beyond 150.']);
  site.judge = () => null;
  await retry(record.id);
  await until(({ attention, waiting, busy }) => !attention && !waiting && !busy);
});

test('a save in the middle of a round is sent too', async () => {
  let late = null;
  site.after = what => {
    if (what === 'pull' && !late) late = save('Late');
  };
  await syncNow();
  site.after = () => {};
  const { id } = await late;
  await until(({ waiting, busy }) => !waiting && !busy, 6000);
  assert.equal(stateOf(id), 'sent');
});

test('a round asked for during another follows it', async () => {
  await until(({ busy }) => !busy);
  site.calls.length = 0;
  const first = syncNow();
  await Promise.all([first, syncNow(), syncNow()]);
  assert.deepEqual(site.calls, ['pull', 'pull']);
});

test('a clock that is hours behind or ahead is told of, holds nothing up, and a right one is not told of', async () => {
  for (const ahead_s of [-7 * 3600, 3600]) {
    site.ahead_s = ahead_s;
    const record = await save(`Wout ${ahead_s}`);
    await syncNow();
    assert.equal(syncState.get().clockOff_s, ahead_s);
    assert.deepEqual([stateOf(record.id), site.records.at(-1).recorded_at], ['sent', record.recorded_at]);
  }
  site.ahead_s = 0;
  await syncNow();
  assert.equal(syncState.get().clockOff_s, null);
});

test('an app too old keeps all it has, and says why nothing moves', async () => {
  site.before = () => {
    throw new ServerFault(426, { code: 'client_too_old', text: 'Update the app.' });
  };
  await save('Nele');
  await until(({ error, busy }) => error?.code === 'client_too_old' && !busy);
  assert.equal(records.get().at(-1).body.full_name, 'Nele');
  site.before = () => {};
  happen('focus');
  await until(({ waiting, error, busy }) => !waiting && !error && !busy);
});

test('while locked nothing is shown and nothing moves; unlocking goes on', async () => {
  drafts.keep('patient/new', { full_name: 'half' });
  await lock();
  assert.deepEqual([session.get().phase, records.get(), drafts.get('patient/new')], ['locked', [], undefined]);
  site.calls.length = 0;
  await syncNow();
  assert.deepEqual(site.calls, []);
  await assert.rejects(save('Nobody'), { code: 'locked' });
  await unlock(SECRET);
  assert.deepEqual(drafts.get('patient/new'), { full_name: 'half' });
  await until(({ busy }) => !busy);
});

test('signing out sends what waits, and leaves nothing here', async () => {
  drafts.drop('patient/new');
  site.online = false;
  await save('Last');
  await assert.rejects(signOut(), { code: 'unsent_work', value: 1 });
  site.online = true;
  await signOut();
  assert.deepEqual([session.get().phase, records.get(), outbox.get(), site.who], ['signed-out', [], [], null]);
  assert.ok(site.records.some(({ body }) => body.full_name === 'Last'));
  assert.ok(!(await indexedDB.databases()).some(({ name }) => name.startsWith('ledger')));
});
