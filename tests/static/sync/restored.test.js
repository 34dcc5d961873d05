import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drain } from '../../../static/app/sync/drain.js';
import { ServerFault } from '../../../static/app/session/server.js';
import { clinic, unreachable } from '../support/clinic.mjs';
import { openPhone, savePatient } from '../support/phone.mjs';
import { mulberry } from '../support/random.mjs';

const ids = records => records.map(({ id }) => id).sort();

/** One round, by the person whose phone it is. */
function round(ledger, server) {
  server.username = ledger.author;
  return drain(ledger, server, { locks: null });
}

async function untilDone(ledger, server, most = 30) {
  for (let tries = 0; tries < most; tries += 1) {
    if ((await round(ledger, server)).end === 'done') return;
  }
  assert.fail(`not through after ${most} rounds`);
}

test('every record that the clinic took has its receipt here, whether it was sent or fetched, and so after a restart', async () => {
  const server = clinic();
  const [noor, tomas] = [await openPhone(), await openPhone({ author: 'tomas' })];
  await savePatient(noor);
  for (const ledger of [noor, tomas]) await untilDone(ledger, server);
  for (const ledger of [noor, tomas]) {
    ledger.close();
    const again = await openPhone({ author: ledger.author, place: ledger.place_, device: ledger.device });
    assert.equal(again.records.get().length, 2);
    for (const { id, receipt } of again.records.get()) assert.match(receipt, new RegExp(`^receipt ${id}`));
  }
});

test('a record that was never sent goes without a receipt', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await savePatient(ledger);
  const sent = [];
  server.before = (what, body) => what === 'push' && sent.push(...body.records);
  await untilDone(ledger, server);
  assert.deepEqual(sent.map(record => 'receipt' in record), [false, false]);
});

test("what another person's lost phone had sent comes back to a restored clinic from whoever fetched it", async () => {
  const server = clinic({ page: 2 });
  const [lost, keeper, other] = [await openPhone({ author: 'ilse' }), await openPhone(), await openPhone({ author: 'tomas' })];
  await savePatient(lost, 'Ilse');
  await savePatient(lost, 'Bram');
  for (const ledger of [lost, keeper, other]) await untilDone(ledger, server);
  const all = ids(server.records);
  lost.close();

  server.restore(1);
  for (const ledger of [keeper, other, keeper, other]) await untilDone(ledger, server);
  assert.deepEqual(ids(server.records), all);
  assert.deepEqual([...new Set(server.records.map(({ author }) => author))], ['ilse']);
  for (const ledger of [keeper, other]) {
    assert.deepEqual(ids(ledger.records.get()), all);
    assert.deepEqual(ledger.outbox.get(), []);
    assert.equal((await ledger.place()).recheck, false);
  }
});

test('what was sent before the first fetch is not forgotten, should the clinic be restored in between', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await savePatient(ledger);
  server.after = what => {
    if (what === 'push') throw unreachable();
  };
  assert.equal((await round(ledger, server)).end, 'later');
  assert.equal(server.records.length, 2);
  server.restore(0);
  server.after = () => {};
  await untilDone(ledger, server);
  await untilDone(ledger, server);
  assert.equal(server.records.length, 2);
});

test('what was sent, and met no pull since, is not forgotten should the clinic be restored', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await untilDone(ledger, server);
  await savePatient(ledger);
  server.calls.length = 0;
  await untilDone(ledger, server);
  assert.deepEqual(server.calls, ['push']);
  server.restore(0);
  await untilDone(ledger, server);
  await untilDone(ledger, server);
  assert.equal(server.records.length, 2);
});

test("a phone that has not met the clinic's feed yet sends nothing to it", async () => {
  const server = clinic();
  const ledger = await openPhone();
  await savePatient(ledger);
  server.before = what => {
    if (what === 'pull') throw unreachable();
  };
  assert.equal((await round(ledger, server)).end, 'later');
  assert.ok(!server.calls.includes('push'));
  server.before = () => {};
  await untilDone(ledger, server);
  assert.deepEqual(server.calls.slice(-3), ['pull', 'pull', 'push']);
  assert.equal(server.records.length, 2);
});

test('with the new role of a person leaves what that role may not have, sent from here or not; what is unsent stays', async () => {
  const server = clinic();
  const ledger = await openPhone();
  const { patient, examination } = await savePatient(ledger, 'Ilse');
  await untilDone(ledger, server);
  const { examination: unsent } = await savePatient(ledger, 'Bram');
  server.scope = 'theatre';
  server.hides = ({ kind }) => kind === 'examination';
  server.before = what => {
    if (what === 'push') throw new ServerFault(403, { code: 'permission_denied', text: 'No.' });
  };
  await round(ledger, server);
  assert.ok(ledger.find(patient.id));
  assert.equal(ledger.find(examination.id), undefined);
  assert.ok(ledger.find(unsent.id));
  assert.equal(ledger.outbox.get().length, 2);
  assert.equal(server.records.length, 2);
});

test('a clinic that is restored while the fetch for a new role is under way is still given what it lacks', async () => {
  const server = clinic({ page: 1 });
  const ledger = await openPhone();
  await savePatient(ledger, 'Ilse');
  await untilDone(ledger, server);
  const all = ids(server.records);
  server.scope = 'theatre';
  let pulls = 0;
  server.before = what => {
    if (what === 'pull' && (pulls += 1) === 2) throw unreachable();
  };
  assert.equal((await round(ledger, server)).end, 'later');
  assert.deepEqual((await ledger.place()).staging, { cursor: '', restored: false });
  server.restore(0);
  await untilDone(ledger, server);
  await untilDone(ledger, server);
  assert.deepEqual(ids(server.records), all);
  assert.deepEqual(ids(ledger.records.get()), all);
});

test('what was offered and lies outside the scope by now leaves the phone once the clinic has it', async () => {
  const server = clinic();
  const [maker, nurse] = [await openPhone(), await openPhone({ author: 'mei' })];
  const { patient, examination } = await savePatient(maker, 'Ilse');
  for (const ledger of [maker, nurse]) await untilDone(ledger, server);
  maker.close();
  server.hides = ({ id }) => id === examination.id;
  server.restore(1);
  await untilDone(nurse, server);
  assert.ok(nurse.find(examination.id), 'until the clinic has it');
  await untilDone(nurse, server);
  await untilDone(nurse, server);
  assert.deepEqual(ids(server.records), ids([patient, examination]));
  assert.deepEqual(ids(nurse.records.get()), [patient.id]);
});

test('a record of another person without a receipt is not dropped: it waits for a person, with the reason', async () => {
  const server = clinic();
  const [maker, reader] = [await openPhone(), await openPhone({ author: 'tomas' })];
  const { patient } = await savePatient(maker);
  for (const ledger of [maker, reader]) await untilDone(ledger, server);
  maker.close();
  server.restore(0);
  server.judged = (judged => (record, _receipt) => judged(record, undefined))(server.judged);
  await untilDone(reader, server);
  await untilDone(reader, server);
  assert.ok(reader.find(patient.id));
  assert.deepEqual(reader.outbox.get().map(({ state, code }) => [state, code])[0], ['attention', 'receipt_invalid']);
});

test('what leaves the scope goes with the page and its cursor, but for what is not sent yet', async () => {
  const server = clinic();
  const ledger = await openPhone();
  const { patient, examination } = await savePatient(ledger, 'Ilse');
  await untilDone(ledger, server);
  const unsent = await ledger.save('patient', { body: { schema: 1, full_name: 'Bram' } });
  ledger.kept.keep(`card/${examination.id}`, { made: 'of it' });
  ledger.kept.keep(`card/${patient.id}`, { made: 'of that' });
  server.removed = [examination.id, unsent.id, '0197c0de-0000-7000-8000-00000000ffff'];
  server.before = what => {
    if (what === 'push') throw new ServerFault(403, { code: 'permission_denied', text: 'No.' });
  };
  await round(ledger, server);
  assert.deepEqual(ids(ledger.records.get()), ids([patient, unsent]));
  assert.deepEqual(ledger.kept.names(), [`card/${patient.id}`]);
  ledger.close();
  const again = await openPhone({ place: ledger.place_, device: ledger.device });
  assert.deepEqual(ids(again.records.get()), ids([patient, unsent]));
});

test('a removal whose page was not stored happens with the next try', async () => {
  const server = clinic();
  const ledger = await openPhone();
  const { examination } = await savePatient(ledger, 'Ilse');
  await untilDone(ledger, server);
  const { cursor } = await ledger.place();
  server.removed = [examination.id];
  server.after = what => {
    if (what === 'pull') throw unreachable();
  };
  await round(ledger, server);
  assert.ok(ledger.find(examination.id));
  assert.equal((await ledger.place()).cursor, cursor);
  server.after = () => {};
  server.removed = [examination.id];
  await round(ledger, server);
  assert.equal(ledger.find(examination.id), undefined);
});

test('what leaves the scope while a fresh fetch stands half done is not there when it is complete', async () => {
  const server = clinic({ page: 1 });
  const [maker, nurse] = [await openPhone(), await openPhone({ author: 'mei' })];
  const { patient, examination } = await savePatient(maker, 'Ilse');
  const { patient: bram } = await savePatient(maker, 'Bram');
  for (const ledger of [maker, nurse]) await untilDone(ledger, server);
  server.scope = 'theatre';
  let pulls = 0;
  server.before = what => {
    if (what === 'pull' && (pulls += 1) === 4) throw unreachable();
  };
  assert.equal((await round(nurse, server)).end, 'later');

  server.before = () => {};
  server.removed = [examination.id];
  server.hides = ({ kind }) => kind === 'examination';
  await untilDone(nurse, server);
  assert.deepEqual(server.removed, [], 'it was told once');
  assert.deepEqual(ids(nurse.records.get()), ids([patient, bram]));
  assert.equal((await nurse.place()).staging, null);
  nurse.close();
  const again = await openPhone({ author: 'mei', place: nurse.place_, device: nurse.device });
  assert.deepEqual(ids(again.records.get()), ids([patient, bram]));
});

test('restored at any points of a storm, with a phone lost on the way: nothing that a phone still holds is lost, and each is there once', async () => {
  for (let seed = 1; seed <= 25; seed += 1) {
    const random = mulberry(seed);
    const server = clinic({ page: 3 });
    const storm = () => {
      if (random() < 0.25) throw random() < 0.5 ? unreachable() : new ServerFault(503, {});
    };
    server.before = storm;
    server.after = storm;
    const phones = await Promise.all(['noor', 'tomas', 'ilse'].map(author => openPhone({ author })));
    for (let step = 0; step < 20; step += 1) {
      const index = Math.floor(random() * phones.length);
      if (random() < 0.5) await savePatient(phones[index], `${seed}-${step}`);
      await round(phones[index], server);
      if (random() < 0.25) server.restore(Math.floor(random() * (server.records.length + 1)));
      if (random() < 0.2) {
        const { author, place_, device } = phones[index];
        phones[index].close();
        phones[index] = await openPhone({ author, place: place_, device });
      }
      if (step === 12) phones.pop().close();
    }
    const held = new Set(phones.flatMap(ledger => ids(ledger.records.get())));
    server.before = () => {};
    server.after = () => {};
    for (const ledger of [...phones, ...phones, ...phones]) await untilDone(ledger, server);
    const all = ids(server.records);
    assert.equal(new Set(all).size, all.length, `seed ${seed}`);
    assert.deepEqual([...held].filter(id => !all.includes(id)), [], `seed ${seed}`);
    for (const ledger of phones) {
      assert.deepEqual(ids(ledger.records.get()), all, `seed ${seed}`);
      assert.deepEqual(ledger.outbox.get(), [], `seed ${seed}`);
      ledger.close();
    }
  }
});
