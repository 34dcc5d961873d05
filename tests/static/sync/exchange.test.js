import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drain } from '../../../static/app/sync/drain.js';
import { ServerFault } from '../../../static/app/session/server.js';
import { clinic, unreachable } from '../support/clinic.mjs';
import { openPhone, phone, savePatient, SECRET } from '../support/phone.mjs';
import { mulberry } from '../support/random.mjs';

const noLocks = { locks: null };
const names = ledger => ledger.records.get().filter(({ kind }) => kind === 'patient').map(({ body }) => body.full_name).sort();
const ids = records => records.map(({ id }) => id).sort();

/** Rounds until everything is through, as the timer would do. */
async function untilDone(ledger, server, most = 50) {
  for (let round = 0; round < most; round += 1) {
    const { end } = await drain(ledger, server, noLocks);
    if (end === 'done') return round + 1;
    assert.equal(end, 'later');
  }
  return assert.fail(`not through after ${most} rounds`);
}

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

test('one new record takes one request, which also says that there is no news', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await drain(ledger, server, noLocks);
  await ledger.save('patient', { body: { schema: 1 } });
  server.calls.length = 0;
  await drain(ledger, server, noLocks);
  assert.deepEqual(server.calls, ['push']);
  assert.equal((await ledger.place()).cursor, server.cursor(1));
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

test('a step in the feed is taken only from where this phone stands, and only with what was sent still here', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await drain(ledger, server, noLocks);
  const { cursor } = await ledger.place();
  const gone = { id: '0192f0c1-0000-7000-8000-000000000001', to: 'sent', answer: { status: 'accepted', position: 1 } };
  assert.equal(await ledger.settle([], { after: 'elsewhere', cursor: server.cursor(1) }), false);
  assert.equal(await ledger.settle([gone], { after: cursor, cursor: server.cursor(1) }), false);
  assert.equal((await ledger.place()).cursor, cursor);
  assert.equal(await ledger.settle([], { after: cursor, cursor: server.cursor(1) }), true);
  await ledger.startStaging({ restored: false });
  assert.equal(await ledger.settle([], { after: server.cursor(1), cursor: server.cursor(2) }), false);
  assert.equal((await ledger.place()).cursor, server.cursor(1));
});

test('many batches follow each other, each record once, and no record twice on its way', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await drain(ledger, server, noLocks);
  for (let number = 0; number < 450; number += 1) await ledger.save('patient', { body: { schema: 1, number } });
  server.calls.length = 0;
  let sent = 0;
  server.before = (_what, body) => void (sent += body.records.length);
  await drain(ledger, server, noLocks);
  assert.deepEqual([server.calls, sent, server.records.length], [['push', 'push', 'push', 'push'], 450, 450]);
  assert.deepEqual([ledger.outbox.get(), (await ledger.place()).cursor], [[], server.cursor(450)]);
  assert.ok(ledger.records.get().every(({ position, receipt }) => position && receipt));
});

test('two batches are under way at once, and the place in the feed is reached in whichever order they are answered', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await drain(ledger, server, noLocks);
  for (let number = 0; number < 450; number += 1) await ledger.save('patient', { body: { schema: 1, number } });
  const call = server.call;
  let underWay = 0;
  let most = 0;
  let slow = true;
  server.call = async (...args) => {
    underWay += 1;
    most = Math.max(most, underWay);
    const answer = await call(...args);
    if (slow) {
      slow = false;
      await new Promise(resolve => setTimeout(resolve, 50));
    }
    underWay -= 1;
    return answer;
  };
  server.calls.length = 0;
  await drain(ledger, server, noLocks);
  assert.deepEqual([most, server.calls], [2, ['push', 'push', 'push', 'push']]);
  assert.deepEqual([ledger.outbox.get(), (await ledger.place()).cursor], [[], server.cursor(450)]);
});

test('where one of two batches finds no network, the other is stored before the push has ended', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await drain(ledger, server, noLocks);
  for (let number = 0; number < 300; number += 1) await ledger.save('patient', { body: { schema: 1, number } });
  let pushes = 0;
  server.before = what => {
    if (what === 'push' && (pushes += 1) === 1) throw unreachable();
  };
  assert.equal((await drain(ledger, server, noLocks)).end, 'later');
  assert.equal(ledger.outbox.get().length, 200);
  assert.equal((await drain(ledger, server, noLocks)).end, 'done');
  assert.deepEqual([server.records.length, ledger.outbox.get()], [300, []]);
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

test('the patient is never sent after the examination, whatever is refused for now', async () => {
  const server = clinic();
  const ledger = await openPhone();
  const { patient, examination } = await savePatient(ledger);
  await savePatient(ledger, 'Bram');
  let busy = true;
  server.judge = record => {
    if (record.id === patient.id && busy) return { code: 'busy', text: 'Busy.', retryable: true };
    const isThere = server.records.some(({ id }) => id === record.patient);
    return record.kind === 'patient' || isThere ? null : { code: 'patient_unknown', text: 'No such patient.', retryable: false };
  };
  const outcome = await drain(ledger, server, noLocks);
  assert.deepEqual([outcome.end, outcome.problem.code], ['later', 'refused_for_now']);
  assert.deepEqual(ledger.outbox.get().map(({ id, state }) => [id, state]), [[patient.id, 'waiting'], [examination.id, 'waiting']]);
  busy = false;
  await untilDone(ledger, server);
  assert.equal(server.records.length, 4);
});

test('a record refused for good waits aside with its reason, and all others go', async () => {
  const server = clinic();
  const ledger = await openPhone();
  const { examination } = await savePatient(ledger);
  await savePatient(ledger, 'Bram');
  server.judge = ({ id }) => (id === examination.id ? { code: 'out_of_range', text: 'Beyond 150.', field: 'body.readings.0' } : null);
  assert.equal((await drain(ledger, server, noLocks)).end, 'done');
  assert.equal(server.records.length, 3);
  const [entry, ...others] = ledger.outbox.get();
  assert.deepEqual([entry.id, entry.state, entry.code, entry.text, entry.field, others], [examination.id, 'attention', 'out_of_range', 'Beyond 150.', 'body.readings.0', []]);

  server.calls.length = 0;
  await drain(ledger, server, noLocks);
  assert.ok(!server.calls.includes('push'), 'it is not sent again by itself');

  server.judge = () => null;
  await ledger.retry(examination.id);
  await untilDone(ledger, server);
  assert.equal(server.records.length, 4);
});

test('a poison record in a batch that is refused as a whole is found, and the others go', async () => {
  const server = clinic();
  const ledger = await openPhone();
  for (let count = 0; count < 10; count += 1) await ledger.save('patient', { body: { schema: 1, count } });
  const poison = ledger.records.get()[6].id;
  server.before = (what, body) => {
    if (what === 'push' && body.records.some(({ id }) => id === poison)) throw new ServerFault(400, { code: 'bad_json', text: 'No.' });
  };
  assert.equal((await drain(ledger, server, noLocks)).end, 'done');
  assert.equal(server.records.length, 9);
  assert.deepEqual(ledger.outbox.get().map(({ id, state, code }) => [id, state, code]), [[poison, 'attention', 'bad_json']]);
});

test('a server that refuses everything as a whole, an empty batch too, sets nothing aside', async () => {
  const server = clinic();
  const ledger = await openPhone();
  await savePatient(ledger);
  server.before = what => {
    if (what === 'push') throw new ServerFault(400, { code: 'bad_device', text: 'No such device.' });
  };
  const { end, problem } = await drain(ledger, server, noLocks);
  assert.deepEqual([end, problem.code], ['later', 'bad_device']);
  assert.deepEqual(ledger.outbox.get().map(({ state }) => state), ['waiting', 'waiting']);
});

for (const [status, end] of [[0, 'later'], [408, 'later'], [429, 'later'], [500, 'later'], [503, 'later'], [401, 'signed-out'], [404, 'closed'], [426, 'closed']]) {
  test(`the answer ${status} ends the round as ${end}, and the outbox stays as it is`, async () => {
    const server = clinic();
    const ledger = await openPhone();
    await savePatient(ledger);
    const before = ledger.outbox.get();
    server.before = () => {
      throw new ServerFault(status, { code: 'told', text: 'Told.' }, { retryAfter_s: status === 429 ? 30 : null });
    };
    const outcome = await drain(ledger, server, noLocks);
    assert.deepEqual([outcome.end, outcome.problem.code, outcome.retryAfter_s], [end, 'told', status === 429 ? 30 : null]);
    assert.deepEqual(ledger.outbox.get(), before);
  });
}

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
