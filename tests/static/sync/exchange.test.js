import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drain } from '../../../static/app/sync/drain.js';
import { ServerFault } from '../../../static/app/session/server.js';
import { clinic, unreachable } from '../support/clinic.mjs';
import { openPhone, phone, savePatient } from '../support/phone.mjs';
import { mulberry } from '../support/random.mjs';
import { ids, names, noLocks, untilDone } from '../support/rounds.mjs';

test('what one phone saves appears on the other, and both know that it was sent', async () => {
  const server = clinic();
  const [one, other] = [await openPhone(), await openPhone()];
  await savePatient(one, 'Ilse');
  await savePatient(other, 'Bram');
  for (const ledger of [one, other, one]) assert.equal((await drain(ledger, server, noLocks)).end, 'done');
  assert.deepEqual(names(one), ['Bram', 'Ilse']);
  assert.deepEqual(names(other), ['Bram', 'Ilse']);
  assert.deepEqual([one.outbox.get(), other.outbox.get()], [[], []]);
  assert.deepEqual(one.records.get().map(({ position }) => position).sort(), [1, 2, 3, 4]);
});

test("another phone's news is fetched behind what was sent, and nothing that was sent comes back", async () => {
  const server = clinic();
  const [one, other] = [await openPhone(), await openPhone()];
  for (const ledger of [one, other]) await drain(ledger, server, noLocks);
  await savePatient(other, 'Bram');
  await drain(other, server, noLocks);
  await savePatient(one, 'Ilse');
  server.calls.length = 0;
  await drain(one, server, noLocks);
  assert.deepEqual(server.calls, ['push', 'pull']);
  assert.deepEqual(names(one), ['Bram', 'Ilse']);
  server.calls.length = 0;
  let came = 0;
  server.after = (_what, answer) => void (came += answer.records?.length ?? 0);
  await drain(other, server, noLocks);
  assert.deepEqual([server.calls, came, names(other)], [['pull'], 2, ['Bram', 'Ilse']]);
});

test('a lost reply to a push makes no second record, here or there', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await savePatient(ledger);
  let lost = 0;
  server.after = what => {
    if (what === 'push' && (lost += 1) <= 3) throw unreachable();
  };
  assert.equal(await untilDone(ledger, server), 4);
  assert.equal(server.records.length, 2);
  assert.equal(ledger.records.get().length, 2);
  assert.deepEqual(ledger.outbox.get(), []);
});

test('a lost reply that is learned of by the pull is settled by it', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await drain(ledger, server, noLocks);
  await savePatient(ledger);
  server.push({ records: ledger.records.get().map(({ position: _p, received_at: _r, receipt: _t, ...record }) => record) });
  server.before = what => {
    if (what === 'push') throw new ServerFault(403, { code: 'device_unknown', text: '' });
  };
  assert.equal((await drain(ledger, server, noLocks)).end, 'signed-out');
  assert.deepEqual(ledger.outbox.get(), []);
  assert.deepEqual(ledger.records.get().map(({ position }) => position).sort(), [1, 2]);
});

test('under fire from a seeded storm of lost requests, lost replies and kills, three phones end with every record once', async () => {
  for (let seed = 1; seed <= 25; seed += 1) {
    const random = mulberry(seed);
    const server = clinic({ page: 3 });
    const storm = () => {
      if (random() < 0.4) throw random() < 0.5 ? unreachable() : new ServerFault(503, {});
    };
    server.before = storm;
    server.after = storm;
    const phones = await Promise.all([1, 2, 3].map(() => openPhone()));
    for (let step = 0; step < 12; step += 1) {
      const index = Math.floor(random() * 3);
      if (random() < 0.6) await savePatient(phones[index], `${seed}-${step}`);
      await drain(phones[index], server, noLocks);
      if (random() < 0.2) {
        phones[index].close();
        phones[index] = await openPhone({ place: phones[index].place_, device: phones[index].device });
      }
    }
    server.before = () => {};
    server.after = () => {};
    for (const ledger of [...phones, ...phones]) await untilDone(ledger, server);
    const all = ids(server.records);
    assert.equal(new Set(all).size, all.length, `seed ${seed}`);
    for (const ledger of phones) {
      assert.deepEqual(ids(ledger.records.get()), all, `seed ${seed}`);
      assert.deepEqual(ledger.outbox.get(), [], `seed ${seed}`);
      ledger.close();
    }
  }
});
