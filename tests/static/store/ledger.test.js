import assert from 'node:assert/strict';
import { test } from 'node:test';
import { openPhone, PATIENT, phone, rawText, savePatient, SECRET, verdict } from '../support/phone.mjs';
import { within } from '../support/within.mjs';

test('a saved record is there after a restart, with its entry in the outbox', async () => {
  const first = await openPhone();
  const { patient, examination } = await savePatient(first);
  first.close();

  const second = await openPhone({ place: first.place_, device: first.device });
  assert.deepEqual(second.find(patient.id).body, PATIENT);
  assert.equal(second.find(examination.id).patient, patient.id);
  assert.deepEqual(second.outbox.get().map(({ id, state }) => [id, state]), [[patient.id, 'waiting'], [examination.id, 'waiting']]);
});

test('nothing of a patient lies in clear in the database: not in a record, a draft, a reason or a key', async () => {
  const ledger = await openPhone();
  const { patient, examination } = await savePatient(ledger);
  ledger.drafts.keep(`examination/${patient.id}`, { note: 'Vantongeren waits in room 2' });
  await ledger.drafts.flush();
  const answer = { status: 'rejected', code: 'bad_number', text: 'Q-20417 is taken by Vantongeren', field: 'body' };
  await ledger.settle([verdict(ledger, examination.id, 'attention', answer)]);

  const raw = await rawText(ledger.name);
  for (const secret of ['Vantongeren', 'Q-20417', '2019-04-02', 'latex', 'horizontal', 'examination', 'noor', 'bad_number', SECRET]) {
    assert.ok(!raw.includes(secret), `${secret} lies in clear`);
  }
  // That a patient's record exists is no secret (its id is the row's key); that an examination is his or hers is.
  assert.equal(raw.split(patient.id).length - 1, 4);
});

test('a locked ledger shows nothing but counts, and refuses to save', async () => {
  const ledger = await openPhone();
  await savePatient(ledger);
  await ledger.lock();
  assert.deepEqual(ledger.records.get(), []);
  assert.equal(ledger.find(PATIENT.id), undefined);
  assert.equal(ledger.outbox.get().length, 2);
  await assert.rejects(savePatient(ledger), { code: 'locked' });
});

test('a wrong secret opens nothing; tries are counted over a restart, and the right secret has to wait its turn', async () => {
  let clock = 1_000_000;
  const now = () => clock;
  const first = await openPhone({ now });
  await savePatient(first);
  await first.lock();
  for (const guess of ['000001', '000002', '000003']) await assert.rejects(first.unlock(guess), { code: 'wrong_secret' });
  assert.equal(await first.waitUntil(), clock + 5000);
  first.close();

  const second = phone({ place: first.place_, now });
  await assert.rejects(second.unlock(SECRET), fault => fault.code === 'too_many_tries' && fault.value === clock + 5000);
  assert.deepEqual(second.records.get(), []);
  clock += 5000;
  await second.unlock(SECRET);
  assert.equal(second.records.get().length, 2);
  assert.equal(await second.waitUntil(), 0);
});

test('a try that is cut short counts', async () => {
  const ledger = await openPhone({ now: () => 1_000_000 });
  await ledger.lock();
  const tries = ['000001', '000002', '000003'].map(guess => ledger.unlock(guess).catch(() => {}));
  await Promise.all(tries);
  ledger.close();
  const again = phone({ place: ledger.place_, now: () => 1_000_000 });
  assert.ok((await again.waitUntil()) > 0);
});

test('a second secret cannot be put over the first', async () => {
  const ledger = await openPhone();
  await assert.rejects(ledger.setSecret('739104'), { code: 'secret_exists' });
});

test('a changed secret opens the same records', async () => {
  const ledger = await openPhone();
  await savePatient(ledger);
  await ledger.changeSecret(SECRET, 'a long passphrase');
  await ledger.lock();
  await assert.rejects(ledger.unlock(SECRET), { code: 'wrong_secret' });
  await ledger.unlock('a long passphrase');
  assert.equal(ledger.records.get().length, 2);
});

test('a row that was swapped with another does not open, is told of, and hides no other', async () => {
  const ledger = await openPhone();
  const { patient, examination } = await savePatient(ledger);
  const { patient: other } = await savePatient(ledger, 'Bram Ysewijn');
  ledger.close();
  const db = await new Promise(resolve => {
    const request = indexedDB.open(ledger.name);
    request.onsuccess = () => resolve(request.result);
  });
  const rows = db.transaction('records', 'readwrite').objectStore('records');
  const read = id => new Promise(resolve => (rows.get(id).onsuccess = event => resolve(event.target.result)));
  const [one, two] = [await read(patient.id), await read(other.id)];
  rows.put({ ...one, iv: two.iv, sealed: two.sealed });
  await new Promise(resolve => (rows.transaction.oncomplete = resolve));
  db.close();

  const again = await openPhone({ place: ledger.place_ });
  assert.deepEqual(again.broken.get(), [patient.id]);
  assert.deepEqual(again.records.get().map(({ id }) => id).includes(examination.id), true);
  assert.equal(again.find(other.id).body.full_name, 'Bram Ysewijn');
});

test('a save that fails says so, leaves no half of it, and keeps the draft', async () => {
  const ledger = await openPhone();
  ledger.drafts.keep('patient/new', { full_name: 'Ilse' });
  await ledger.drafts.flush();
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function (value, ...key) {
    if (this.name === 'outbox') throw new DOMException('full', 'QuotaExceededError');
    return put.call(this, value, ...key);
  };
  await assert.rejects(ledger.save('patient', { body: PATIENT, draft: 'patient/new' }), { code: 'storage_full' });
  IDBObjectStore.prototype.put = put;
  assert.deepEqual(ledger.records.get(), []);
  assert.deepEqual(ledger.drafts.get('patient/new'), { full_name: 'Ilse' });
  await ledger.lock();
  await ledger.unlock(SECRET);
  assert.deepEqual(ledger.records.get(), []);
  assert.deepEqual(ledger.drafts.get('patient/new'), { full_name: 'Ilse' });
});

test('a draft goes in the transaction that saves it', async () => {
  const ledger = await openPhone();
  ledger.drafts.keep('patient/new', { full_name: 'Ilse' });
  await ledger.drafts.flush();
  ledger.drafts.keep('patient/new', { full_name: 'Ilse V' });
  await ledger.save('patient', { body: PATIENT, draft: 'patient/new' });
  await ledger.drafts.flush();
  assert.equal(ledger.drafts.get('patient/new'), undefined);
  assert.deepEqual(await ledger.unsent(), { records: 1, drafts: 0 });
});

test('another tab sees what this one saves, sends and leaves for attention', async () => {
  const here = await openPhone();
  const there = await openPhone({ place: here.place_, device: here.device });
  const { patient, examination } = await savePatient(here);
  await within(() => {
    assert.deepEqual(there.find(patient.id)?.body, PATIENT);
    assert.equal(there.outbox.get().length, 2);
  });

  await here.settle([
    verdict(here, patient.id, 'sent', { status: 'accepted', position: 7, received_at: 'now' }),
    verdict(here, examination.id, 'attention', { status: 'rejected', code: 'odd', text: 'Odd.', field: 'body' }),
  ]);
  await within(() => {
    assert.equal(there.find(patient.id).position, 7);
    assert.deepEqual(there.outbox.get().map(({ state, code, text }) => [state, code, text]), [['attention', 'odd', 'Odd.']]);
  });
  here.close();
  there.close();
});

test('what needs attention can be sent again, in its old place', async () => {
  const ledger = await openPhone();
  const { patient } = await savePatient(ledger);
  await ledger.settle([verdict(ledger, patient.id, 'attention', { status: 'rejected', code: 'odd' })]);
  await ledger.retry(patient.id);
  assert.deepEqual(ledger.outbox.get().map(({ state, code, sequence }) => [state, code, sequence]), [['waiting', '', 1], ['waiting', '', 2]]);
});
