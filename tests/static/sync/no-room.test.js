/** A phone without room for what the clinic says: nothing of a step is half done, it is told, and with room again all goes on. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drain } from '../../../static/app/sync/drain.js';
import { clinic } from '../support/clinic.mjs';
import { openPhone, savePatient } from '../support/phone.mjs';

const noLocks = { locks: null };
const ids = records => records.map(({ id }) => id).sort();
const { put } = IDBObjectStore.prototype;

/** The ways in which browsers refuse: the request itself, or afterwards the whole transaction. */
const WAYS = {
  'the request is refused': () => {
    throw new DOMException('no room', 'QuotaExceededError');
  },
  'the transaction is aborted': (store, given) => {
    const request = put.apply(store, given);
    store.transaction._abort('QuotaExceededError');
    return request;
  },
};

/** From the second row on nothing fits into the store of that name, and none into one with a row for all; until there is room again. */
function fill(t, name, refuse) {
  let rows = 0;
  IDBObjectStore.prototype.put = function (...given) {
    return this.name === name && (rows += 1) > (name === 'words' ? 0 : 1) ? refuse(this, given) : put.apply(this, given);
  };
  const makeRoom = () => Object.assign(IDBObjectStore.prototype, { put });
  t.after(makeRoom);
  return makeRoom;
}

/** As an app finds it that is opened now. */
async function stored(ledger) {
  const again = await openPhone({ author: ledger.author, place: ledger.place_, device: ledger.device });
  const { cursor, staging, complete } = await again.place();
  const rows = again.records.get().map(({ id, position, receipt }) => [id, position, receipt]).sort();
  again.close();
  return { rows, outbox: again.outbox.get(), cursor, staging, complete };
}

async function untilDone(ledger, server) {
  server.username = ledger.author;
  for (let tries = 0; tries < 10; tries += 1) if ((await drain(ledger, server, noLocks)).end === 'done') return;
  assert.fail('not through');
}

async function refusedOnce(t, ledger, server, store, refuse) {
  const before = await stored(ledger);
  const makeRoom = fill(t, store, refuse);
  server.username = ledger.author;
  const { end, problem } = await drain(ledger, server, noLocks);
  makeRoom();
  assert.deepEqual([end, problem?.code], ['later', 'storage_full']);
  assert.match(problem.text, /storage is full.*What was saved here is kept/);
  return { before, after: await stored(ledger) };
}

for (const [way, refuse] of Object.entries(WAYS)) {
  test(`a page of the feed, ${way}`, async t => {
    const server = clinic();
    const [maker, reader] = [await openPhone(), await openPhone({ author: 'tomas' })];
    await savePatient(maker);
    await untilDone(maker, server);
    await untilDone(reader, server);
    await savePatient(maker, 'Bram');
    await untilDone(maker, server);

    const { before, after } = await refusedOnce(t, reader, server, 'records', refuse);
    assert.deepEqual(after, before);
    assert.deepEqual(ids(reader.records.get()), before.rows.map(([id]) => id));
    await untilDone(reader, server);
    assert.deepEqual(ids(reader.records.get()), ids(server.records));
    assert.deepEqual(await stored(reader), { ...(await stored(maker)), complete: true });
  });

  test(`the answers to a push, ${way}`, async t => {
    const server = clinic();
    const ledger = await openPhone();
    await untilDone(ledger, server);
    await savePatient(ledger);

    const { before, after } = await refusedOnce(t, ledger, server, 'words', refuse);
    assert.deepEqual(after, before);
    assert.equal(server.records.length, 2, 'the clinic has them all the same');
    await untilDone(ledger, server);
    assert.deepEqual([ids(server.records), ledger.outbox.get()], [ids(ledger.records.get()), []]);
    assert.deepEqual(ledger.records.get().map(({ position }) => position).sort(), [1, 2]);
  });

  for (const [step, store] of [['a page of a new feed', 'staging'], ['a new feed in the place of the old', 'records']]) {
    test(`${step}, ${way}`, async t => {
      const server = clinic();
      const ledger = await openPhone();
      await savePatient(ledger);
      await untilDone(ledger, server);
      server.restore(1);
      server.records.push({ ...server.records[0], id: '0197c0de-0000-7000-8000-00000000b4a3', position: 2 });
      const all = new Set([...ids(server.records), ...ids(ledger.records.get())]);

      const { before, after } = await refusedOnce(t, ledger, server, store, refuse);
      assert.deepEqual([after.rows, after.outbox, after.cursor], [before.rows, before.outbox, before.cursor]);
      await untilDone(ledger, server);
      await untilDone(ledger, server);
      assert.deepEqual([ids(server.records), ids(ledger.records.get())], [[...all].sort(), [...all].sort()]);
      assert.deepEqual(ledger.outbox.get(), []);
    });
  }
}
