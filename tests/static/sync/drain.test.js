import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drain } from '../../../static/app/sync/drain.js';
import { ServerFault } from '../../../static/app/session/server.js';
import { clinic } from '../support/clinic.mjs';
import { openPhone, savePatient } from '../support/phone.mjs';
import { names, noLocks } from '../support/rounds.mjs';

test('an account that may not send still hears the news', async () => {
  const server = clinic();
  const [sender, reader] = [await openPhone(), await openPhone()];
  await savePatient(sender, 'Ilse');
  await drain(sender, server, noLocks);
  await savePatient(reader, 'Bram');
  server.before = what => {
    if (what === 'push') throw new ServerFault(403, { code: 'permission_denied', text: 'No.' });
  };
  const { end, problem } = await drain(reader, server, noLocks);
  assert.deepEqual([end, problem.code], ['fetched', 'permission_denied']);
  assert.deepEqual(names(reader), ['Bram', 'Ilse']);
  assert.equal(reader.outbox.get().length, 2);
});

test('an app that is too old fetches what there is, sends nothing, and keeps what it has', async () => {
  const server = clinic();
  const [sender, old] = [await openPhone(), await openPhone()];
  await savePatient(sender, 'Ilse');
  await drain(sender, server, noLocks);
  await savePatient(old, 'Bram');
  server.minimum_client = 99;
  await server.greet();
  server.calls.length = 0;
  const { end, problem } = await drain(old, server, noLocks);
  assert.deepEqual([end, problem.code], ['fetched', 'client_too_old']);
  assert.ok(!server.calls.includes('push'));
  assert.deepEqual(names(old), ['Bram', 'Ilse']);
  assert.deepEqual(old.outbox.get().map(({ state }) => state), ['waiting', 'waiting']);
});

test('an app that learns only by its push that it is too old still fetches', async () => {
  const server = clinic();
  const [sender, old] = [await openPhone(), await openPhone()];
  await savePatient(sender, 'Ilse');
  await drain(sender, server, noLocks);
  await savePatient(old, 'Bram');
  server.before = what => {
    if (what === 'push') throw new ServerFault(426, { code: 'client_too_old', text: 'Too old.' });
  };
  assert.deepEqual((await drain(old, server, noLocks)).end, 'fetched');
  assert.deepEqual(names(old), ['Bram', 'Ilse']);
  assert.equal(old.outbox.get().length, 2);
});

test("one person's records are never sent in another's session", async () => {
  const server = clinic({ username: 'tomas' });
  const ledger = await openPhone({ author: 'noor' });
  await savePatient(ledger);
  assert.equal((await drain(ledger, server, noLocks)).end, 'signed-out');
  assert.ok(!server.calls.includes('push'));
  server.username = 'noor';
  assert.equal((await drain(ledger, server, noLocks)).end, 'done');
  assert.equal(server.records.length, 2);
});

test('only one tab at a time sends', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await savePatient(ledger);
  let taken = false;
  const locks = {
    async request(_name, { ifAvailable }, work) {
      assert.ok(ifAvailable);
      if (taken) return work(null);
      taken = true;
      try {
        return await work({});
      } finally {
        taken = false;
      }
    },
  };
  const ends = await Promise.all([drain(ledger, server, { locks }), drain(ledger, server, { locks })]);
  assert.deepEqual(ends.map(({ end }) => end).sort(), ['done', 'elsewhere']);
  assert.equal(server.calls.filter(call => call === 'push').length, 1);
});

test('a round that meets a lock stops without a word', async () => {
  const server = clinic();
  const [sender, reader] = [await openPhone(), await openPhone()];
  await savePatient(sender);
  await drain(sender, server, noLocks);
  const answer = server.call;
  server.call = async (...asked) => {
    const answered = await answer(...asked);
    await reader.lock();
    return answered;
  };
  assert.deepEqual(await drain(reader, server, noLocks), { end: 'stopped', problem: null, retryAfter_s: null });
  assert.deepEqual(reader.records.get(), []);
});
