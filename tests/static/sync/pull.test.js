import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drain } from '../../../static/app/sync/drain.js';
import { ServerFault } from '../../../static/app/session/server.js';
import { clinic, unreachable } from '../support/clinic.mjs';
import { openPhone, phone, savePatient, SECRET } from '../support/phone.mjs';
import { ids, names, noLocks, untilDone } from '../support/rounds.mjs';

test('a page and its cursor are stored together: a fetch that is cut short goes on where it stopped', async () => {
  const server = clinic({ page: 4 });
  const sender = await openPhone();
  for (let count = 0; count < 10; count += 1) await sender.save('patient', { body: { schema: 1, count } });
  await drain(sender, server, noLocks);

  const reader = await openPhone();
  const asked = [];
  server.before = (what, _body, path) => {
    if (what !== 'pull') return;
    asked.push(new URL(path, 'http://clinic').searchParams.get('after'));
    if (asked.length === 3) throw unreachable();
  };
  assert.equal((await drain(reader, server, noLocks)).end, 'later');
  assert.equal((await reader.place()).complete, false);
  reader.close();
  const again = await openPhone({ place: reader.place_, device: reader.device });
  assert.equal(again.records.get().length, 8);
  assert.equal((await drain(again, server, noLocks)).end, 'done');
  assert.deepEqual(asked, ['', 'feed-1:4', 'feed-1:8', 'feed-1:8']);
  assert.equal(again.records.get().length, 10);
  assert.equal((await again.place()).complete, true);
});

test('after a restored backup nothing is lost: what the clinic forgot is sent again by the phone that made it', async () => {
  const server = clinic({ page: 3 });
  const [one, other] = [await openPhone(), await openPhone()];
  await savePatient(one, 'Ilse');
  await drain(one, server, noLocks);
  await savePatient(other, 'Bram');
  await drain(other, server, noLocks);
  await drain(one, server, noLocks);
  const { examination: unsent } = await savePatient(one, 'Wout');

  server.restore(1);
  await untilDone(one, server);
  assert.ok(one.find(unsent.id));
  await untilDone(one, server);
  await untilDone(other, server);
  await untilDone(other, server);
  await untilDone(one, server);
  assert.equal(server.records.length, 6);
  for (const ledger of [one, other]) {
    assert.deepEqual(names(ledger), ['Bram', 'Ilse', 'Wout']);
    assert.deepEqual(ids(ledger.records.get()), ids(server.records));
    assert.deepEqual(ledger.outbox.get(), []);
  }
});

test('while a new feed is fetched the old records stay readable, and a kill in the middle loses nothing', async () => {
  const server = clinic({ page: 2 });
  const sender = await openPhone();
  for (let count = 0; count < 6; count += 1) await sender.save('patient', { body: { schema: 1, count } });
  await drain(sender, server, noLocks);
  const reader = await openPhone();
  await drain(reader, server, noLocks);

  server.feed = 'feed-2';
  let pulls = 0;
  server.before = what => {
    if (what === 'pull' && (pulls += 1) === 4) throw unreachable();
  };
  assert.equal((await drain(reader, server, noLocks)).end, 'later');
  assert.equal(reader.records.get().length, 6);
  assert.deepEqual((await reader.place()).staging, { cursor: 'feed-2:4', restored: true });
  reader.close();
  const again = phone({ place: reader.place_, device: reader.device });
  await again.unlock(SECRET);
  assert.equal(again.records.get().length, 6);
  const asked = [];
  server.before = (what, _body, path) => what === 'pull' && asked.push(new URL(path, 'http://clinic').searchParams.get('after'));
  await untilDone(again, server);
  assert.deepEqual(asked, ['feed-2:4']);
  assert.deepEqual(await again.place().then(({ cursor, staging }) => [cursor, staging]), ['feed-2:6', null]);
  assert.equal(again.records.get().length, 6);
});

test('what needs attention, and the order of what waits, outlive a change of feed', async () => {
  const server = clinic();
  const ledger = await openPhone();
  const refused = await ledger.save('patient', { body: { schema: 1 } });
  server.judge = () => ({ code: 'out_of_range', text: 'Beyond 150.', field: 'body' });
  await drain(ledger, server, noLocks);
  await savePatient(ledger, 'Wout');
  const before = ledger.outbox.get();
  server.feed = 'feed-2';
  server.before = what => {
    if (what === 'push') throw new ServerFault(403, { code: 'permission_denied', text: 'No.' });
  };
  await drain(ledger, server, noLocks);
  assert.equal((await ledger.place()).cursor, 'feed-2:0');
  assert.deepEqual(ledger.outbox.get(), before);
  assert.deepEqual([before[0].id, before[0].text, before.length], [refused.id, 'Beyond 150.', 3]);
});

test("a record of ours that the feed has with another body stays ours, and the clinic's refusal says so", async () => {
  const server = clinic();
  const ledger = await openPhone();
  const ours = await ledger.save('patient', { body: { schema: 1, full_name: 'Ilse' } });
  server.records.push({ ...ours, body: { full_name: 'Somebody else' }, digest: 'f'.repeat(64), position: 1, received_at: 'then' });
  await drain(ledger, server, noLocks);
  assert.equal(ledger.find(ours.id).body.full_name, 'Ilse');
  assert.deepEqual(ledger.outbox.get().map(({ state, code }) => [state, code]), [['attention', 'id_taken']]);
});
