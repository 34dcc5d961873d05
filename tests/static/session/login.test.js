import '../support/phone.mjs';
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { ServerFault } from '../../../static/app/session/server.js';
import { shareKeys } from '../../../static/app/session/device-keys.js';
import { makeSession } from '../../../static/app/session/login.js';
import { openDevice } from '../../../static/app/store/device.js';
import { openLedger } from '../../../static/app/store/ledger.js';
import { noteStorage, storageState } from '../../../static/app/store/protection.js';
import { observable } from '../../../static/app/observable.js';
import { PATIENT, SECRET, verdict } from '../support/phone.mjs';
import { within } from '../support/within.mjs';

const HARBOUR = { id: 'c1', name: 'Harbour Clinic', role: 'surgeon' };
const HILL = { id: 'c2', name: 'Hill Outreach', role: 'clinic' };
const PASSWORD = 'a good password';

/** The server's half: accounts with their clinics, one session. */
function door(accounts = { noor: [HARBOUR] }) {
  const self = {
    accounts,
    who: null,
    online: true,
    hello: null,
    async greet() {
      if (!self.online) throw new ServerFault(0, { code: 'unreachable' });
      self.hello = { user: self.who && { username: self.who, full_name: self.who }, clinics: self.who ? self.accounts[self.who] : [] };
      return self.hello;
    },
    lastHello: () => self.hello,
    async signIn({ username, password, code, device }) {
      await self.greet();
      if (password !== PASSWORD) throw new ServerFault(401, { code: 'sign_in_failed', text: 'They do not fit.' });
      if (self.factor && code !== self.factor) throw new ServerFault(401, { code: code ? 'second_factor_failed' : 'second_factor_required' });
      self.who = username;
      self.device = device;
      return self.greet();
    },
    async signOut() {
      await self.greet();
      self.who = null;
    },
    async call(method, path, { body } = {}) {
      await self.greet();
      if (method === 'PUT') self.half = { key_id: body.key_id, key: body.key };
      if (path.endsWith('/carrying')) return { key: 'cd'.repeat(32) };
      return self.half;
    },
  };
  return self;
}

let made = 0;

/** The app on one phone; `again` starts it afresh on the same storage. */
function app(server = door(), place = `@${(made += 1)}`, more = {}) {
  const device = openDevice({ name: `device${place}` });
  const ledger = observable(null);
  const store = {
    ledger,
    async openStore(who) {
      store.closeStore();
      ledger.set(openLedger(who, { place, rounds: 10 }));
      await ledger.get().readOutbox();
      return ledger.get();
    },
    closeStore() {
      ledger.get()?.close();
      ledger.set(null);
    },
  };
  const here = makeSession({ device, server, store, tabs: new BroadcastChannel(`session${place}`), ...more });
  return {
    ...here, server, device, ledger, place,
    phase: () => here.session.get().phase,
    again(changed = server) {
      store.closeStore();
      device.close();
      return app(changed, place);
    },
  };
}

async function working(server) {
  const phone = app(server);
  await phone.open();
  await phone.signIn({ username: 'noor', password: PASSWORD });
  await phone.setSecret(SECRET);
  return phone;
}

const save = phone => phone.ledger.get().save('patient', { body: PATIENT });
const databases = async () => (await indexedDB.databases()).map(({ name }) => name);

test('a person signs in online, sets a secret, and works', async () => {
  const phone = app();
  await phone.open();
  assert.equal(phone.phase(), 'signed-out');
  await phone.signIn({ username: 'noor', password: PASSWORD });
  assert.deepEqual([phone.phase(), phone.session.get().login, phone.session.get().clinic], ['no-secret', 'signed-in', HARBOUR]);
  await assert.rejects(phone.setSecret('1234'), { code: 'secret_too_short' });
  await phone.setSecret(SECRET);
  assert.equal(phone.phase(), 'open');
  assert.match(phone.server.device.id, /^[0-9a-f-]{36}$/);
});

test('a wrong password is told, and nothing changes', async () => {
  const phone = app();
  await phone.open();
  await assert.rejects(phone.signIn({ username: 'noor', password: 'no' }), { code: 'sign_in_failed' });
  assert.equal(phone.phase(), 'signed-out');
});

test('an account with a second factor asks for its code', async () => {
  const phone = app(Object.assign(door(), { factor: '314159' }));
  await phone.open();
  const who = { username: 'noor', password: PASSWORD };
  await assert.rejects(phone.signIn(who), { code: 'second_factor_required' });
  await assert.rejects(phone.signIn({ ...who, code: '000000' }), { code: 'second_factor_failed' });
  await phone.signIn({ ...who, code: '314159' });
  assert.equal(phone.phase(), 'no-secret');
});

test('later the phone opens with the secret alone, offline, and is the same device', async () => {
  const first = await working();
  const record = await save(first);
  const phone = first.again();
  phone.server.online = false;
  await phone.open();
  assert.deepEqual([phone.phase(), phone.session.get().user.username], ['locked', 'noor']);
  await phone.unlock(SECRET);
  assert.equal(phone.phase(), 'open');
  assert.equal(phone.ledger.get().find(record.id).device, first.server.device.id);
  assert.equal(phone.ledger.get().device, first.server.device.id);
});

test('a phone without any room still shows who it belongs to, and asks for the secret', async t => {
  const first = await working();
  const { put } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.put = () => {
    throw new DOMException('no room', 'QuotaExceededError');
  };
  t.after(() => Object.assign(IDBObjectStore.prototype, { put }));
  const later = first.again();
  await later.open();
  assert.deepEqual([later.phase(), later.session.get().user.username], ['locked', 'noor']);
});

test('wrong secrets say when the next try counts, after a restart too', async () => {
  const first = await working();
  await first.lock();
  for (const guess of ['000001', '000002', '000003']) await assert.rejects(first.unlock(guess), { code: 'wrong_secret' });
  assert.ok(first.session.get().waitUntil > Date.now());
  const phone = first.again();
  await phone.open();
  assert.ok(phone.session.get().waitUntil > Date.now());
  await assert.rejects(phone.unlock(SECRET), { code: 'too_many_tries' });
});

test('locking shows nothing of a patient, and unlocking all of it again', async () => {
  const phone = await working();
  await save(phone);
  await phone.lock();
  assert.deepEqual([phone.phase(), phone.ledger.get().records.get()], ['locked', []]);
  await phone.unlock(SECRET);
  assert.equal(phone.ledger.get().records.get().length, 1);
});

test('an expired login locks nothing and loses nothing; signing in again goes on from there', async () => {
  const phone = await working();
  await save(phone);
  phone.expire();
  assert.deepEqual([phone.phase(), phone.session.get().login], ['open', 'expired']);
  await save(phone);
  await phone.signIn({ username: 'noor', password: PASSWORD });
  assert.deepEqual([phone.phase(), phone.session.get().login], ['open', 'signed-in']);
  assert.equal(phone.ledger.get().records.get().length, 2);
});

test('a role that changed at the clinic is known here after the next word from it, and after a restart', async () => {
  const phone = await working();
  phone.server.accounts.noor = [{ ...HARBOUR, role: 'coordinator' }];
  await phone.server.greet();
  await phone.confirm();
  assert.equal(phone.session.get().clinic.role, 'coordinator');
  const later = phone.again();
  await later.open();
  assert.equal(later.session.get().clinic.role, 'coordinator');
});

test('a person of two clinics chooses one, and only of their own', async () => {
  const phone = app(door({ noor: [HARBOUR, HILL] }));
  await phone.open();
  await phone.signIn({ username: 'noor', password: PASSWORD });
  assert.deepEqual([phone.phase(), phone.session.get().clinics], ['choose-clinic', [HARBOUR, HILL]]);
  await assert.rejects(phone.chooseClinic('c9'), { code: 'clinic_unknown' });
  await phone.chooseClinic('c2');
  assert.deepEqual([phone.phase(), phone.session.get().clinic], ['no-secret', HILL]);
});

test('an account without a clinic is told so', async () => {
  const phone = app(door({ noor: [] }));
  await phone.open();
  await assert.rejects(phone.signIn({ username: 'noor', password: PASSWORD }), { code: 'no_clinic' });
});

test('signing out with everything sent leaves nothing on the phone', async () => {
  const phone = await working();
  const { name } = phone.ledger.get();
  await phone.signOut();
  assert.deepEqual([phone.phase(), phone.server.who, phone.ledger.get()], ['signed-out', null, null]);
  assert.ok(!(await databases()).includes(name));
});

test('signing out tries to send first, and then needs no confirmation', async () => {
  const phone = await working();
  const { id } = await save(phone);
  phone.sendBeforeLeaving(() => phone.ledger.get().settle([verdict(phone.ledger.get(), id, 'sent', { status: 'accepted', position: 1 })]));
  await phone.signOut();
  assert.equal(phone.phase(), 'signed-out');
});

test('signing out with unsent work is refused with its count, goes with that count, and destroys nothing', async () => {
  const phone = await working();
  await save(phone);
  phone.ledger.get().drafts.keep('patient/new', { full_name: 'half' });
  await assert.rejects(phone.signOut(), fault => fault.code === 'unsent_work' && fault.value === 2 && /1 record and 1 draft/.test(fault.text));
  await assert.rejects(phone.signOut({ leaving: 1 }), { code: 'unsent_work' });
  assert.equal(phone.phase(), 'open');
  await phone.signOut({ leaving: 2 });
  assert.equal(phone.phase(), 'signed-out');

  await phone.signIn({ username: 'noor', password: PASSWORD });
  assert.equal(phone.phase(), 'locked');
  await phone.unlock(SECRET);
  assert.equal(phone.ledger.get().records.get().length, 1);
  assert.equal(phone.ledger.get().outbox.get().length, 1);
  assert.deepEqual(phone.ledger.get().drafts.get('patient/new'), { full_name: 'half' });
});

test('a sign-out offline is told to the server when there is a network again', async () => {
  const phone = await working();
  phone.server.online = false;
  await phone.signOut();
  assert.deepEqual([phone.phase(), phone.server.who], ['signed-out', 'noor']);
  const later = phone.again();
  later.server.online = true;
  await later.open();
  assert.deepEqual([later.phase(), later.server.who], ['signed-out', null]);
});

test('another person on the same phone has another ledger, and the first one finds their own again', async () => {
  const phone = await working(door({ noor: [HARBOUR], tomas: [HARBOUR] }));
  await save(phone);
  await phone.signIn({ username: 'tomas', password: PASSWORD });
  assert.equal(phone.phase(), 'no-secret');
  await phone.setSecret('739104');
  assert.deepEqual(phone.ledger.get().records.get(), []);
  await phone.signIn({ username: 'noor', password: PASSWORD });
  assert.equal(phone.phase(), 'locked');
  await assert.rejects(phone.unlock('739104'), { code: 'wrong_secret' });
  await phone.unlock(SECRET);
  assert.equal(phone.ledger.get().records.get().length, 1);
});

test('who forgot the secret starts afresh with the password, told what is lost and only after confirming that number', async () => {
  const phone = await working();
  await save(phone);
  await phone.lock();
  await assert.rejects(phone.startAfresh({ password: 'no' }), { code: 'sign_in_failed' });
  phone.server.factor = '314159';
  await assert.rejects(phone.startAfresh({ password: PASSWORD }), { code: 'second_factor_required' });
  await assert.rejects(phone.startAfresh({ password: PASSWORD, code: '314159' }), fault => fault.code === 'unsent_work' && fault.value === 1);
  phone.server.factor = 'used up';
  await phone.unlock(SECRET);
  assert.equal(phone.ledger.get().records.get().length, 1);
  await phone.lock();
  await phone.startAfresh({ password: PASSWORD, losing: 1 });
  assert.equal(phone.phase(), 'no-secret');
  await phone.setSecret('739104');
  assert.deepEqual(phone.ledger.get().records.get(), []);
});

test('a forgotten PIN is replaced by a sign-in, and everything is still there', async () => {
  const before = await working();
  await save(before);
  await shareKeys(before.ledger.get(), before.server);
  const [record] = before.ledger.get().records.get();
  const phone = before.again();
  await phone.open();
  assert.equal(await phone.canRecover(), true);
  await assert.rejects(phone.recover({ password: 'guessed', next: '739104' }), { code: 'sign_in_failed' });
  await assert.rejects(phone.recover({ password: PASSWORD, next: '123456' }), { code: 'secret_too_simple' });
  assert.equal(phone.phase(), 'locked');
  await phone.recover({ password: PASSWORD, next: '739104' });
  assert.equal(phone.phase(), 'open');
  assert.equal(phone.ledger.get().find(record.id).digest, record.digest);
  const later = phone.again();
  await later.open();
  await assert.rejects(later.unlock(SECRET), { code: 'wrong_secret' });
  await later.unlock('739104');
});

test('without a network a forgotten PIN stays forgotten, and nothing is lost', async () => {
  const before = await working();
  await save(before);
  await shareKeys(before.ledger.get(), before.server);
  before.server.online = false;
  const phone = before.again();
  await phone.open();
  await assert.rejects(phone.recover({ password: PASSWORD, next: '739104' }), { code: 'unreachable' });
  await phone.unlock(SECRET);
  assert.equal(phone.ledger.get().records.get().length, 1);
});

test('a phone that knows nothing while the clinic knows its browser says that its storage was cleared', async () => {
  noteStorage({ cleared: false });
  const server = door();
  server.who = 'noor';
  const phone = app(server);
  await phone.open();
  assert.deepEqual([phone.phase(), storageState.get().cleared], ['signed-out', true]);
  await phone.signIn({ username: 'noor', password: PASSWORD });
  assert.equal(storageState.get().cleared, true);
});

test('it says so without a network too, by the mark that the browser kept', async () => {
  noteStorage({ cleared: false });
  const phone = app(door(), undefined, { marker: { get: () => true, set: () => {} } });
  await phone.open();
  assert.equal(storageState.get().cleared, true);
});

test('a phone that is only new says nothing of the kind', async () => {
  noteStorage({ cleared: false });
  await app().open();
  assert.equal(storageState.get().cleared, false);
});

test('locking or signing out in one tab does so in the others', async () => {
  const here = await working();
  const there = app(here.server, here.place);
  await there.open();
  await there.unlock(SECRET);
  await here.lock();
  await within(() => assert.deepEqual([there.phase(), there.ledger.get()?.records.get()], ['locked', []]));
  await here.signOut();
  await within(() => assert.deepEqual([there.phase(), there.ledger.get()], ['signed-out', null]));
});
