import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drain } from '../../../static/app/sync/drain.js';
import { ServerFault } from '../../../static/app/session/server.js';
import { clinic, unreachable } from '../support/clinic.mjs';
import { openPhone, phone, savePatient } from '../support/phone.mjs';
import { noLocks, untilDone } from '../support/rounds.mjs';

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
