/** Where the browser has no locks between tabs, two tabs of one phone may be at it at once: that may cost time, and nothing else. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drain } from '../../../static/app/sync/drain.js';
import { clinic } from '../support/clinic.mjs';
import { openPhone, savePatient } from '../support/phone.mjs';
import { mulberry } from '../support/random.mjs';

const noLocks = { locks: null };
const ids = records => records.map(({ id }) => id).sort();
const anotherTab = ledger => openPhone({ place: ledger.place_, device: ledger.device });

async function untilDone(ledger, server, most = 20) {
  for (let round = 0; round < most; round += 1) if ((await drain(ledger, server, noLocks)).end === 'done') return;
  assert.fail(`not through after ${most} rounds`);
}

/** Answers come in an order of their own. */
function scatter(server, random) {
  const { call } = server;
  server.call = async (...asked) => {
    await new Promise(on => setTimeout(on, random() * 6));
    const answer = await call(...asked);
    await new Promise(on => setTimeout(on, random() * 6));
    return answer;
  };
}

async function stored(ledger) {
  const again = await anotherTab(ledger);
  const { cursor, staging } = await again.place();
  const found = { ids: ids(again.records.get()), cursor, staging, waiting: again.outbox.get().length };
  again.close();
  return found;
}

test('a page that was asked for from where the phone no longer stands is left out', async () => {
  const server = clinic({ page: 2 });
  const sender = await openPhone();
  for (let count = 0; count < 3; count += 1) await sender.save('patient', { body: { schema: 1, count } });
  await drain(sender, server, noLocks);
  const reader = await openPhone();
  const [first, second] = [server.pull(new URLSearchParams({ limit: 2 })), server.pull(new URLSearchParams({ after: 'feed-1:2', limit: 2 }))];

  await reader.takeIn({ ...second, after: 'feed-1:2' });
  assert.deepEqual([reader.records.get().length, (await reader.place()).cursor], [0, '']);
  await reader.takeIn({ ...first, after: '' });
  await reader.takeIn({ ...second, after: 'feed-1:2' });
  await reader.takeIn({ ...first, after: '' });
  assert.deepEqual(await stored(reader), { ids: ids(server.records), cursor: 'feed-1:3', staging: null, waiting: 0 });
});

test('a new feed that another tab began afresh is not put in place by the tab that had begun it, nor one that is in place already', async () => {
  const server = clinic({ page: 2 });
  const ledger = await openPhone();
  for (let count = 0; count < 4; count += 1) await ledger.save('patient', { body: { schema: 1, count } });
  await untilDone(ledger, server);
  const before = await stored(ledger);
  const [first, second] = ['', 'feed-1:2'].map(after => ({ ...server.pull(new URLSearchParams({ after, limit: 2 })), after }));
  const other = await anotherTab(ledger);

  await ledger.startStaging({ restored: false });
  await ledger.stage(first);
  await other.startStaging({ restored: false });
  await ledger.stage(second);
  await ledger.swap('feed-1:4');
  assert.deepEqual(await stored(ledger), { ...before, staging: { cursor: '', restored: false } });

  await other.stage(first);
  await other.stage(second);
  await other.swap('feed-1:4');
  await ledger.noteRestored();
  await ledger.swap('feed-1:4');
  assert.deepEqual(await stored(ledger), before);
});

test('two tabs at once, through new roles and restored backups, end with every record that the clinic has, once', async () => {
  for (let seed = 1; seed <= 5; seed += 1) {
    const random = mulberry(seed);
    const server = clinic({ page: 1 + Math.floor(random() * 2) });
    const sender = await openPhone();
    for (let count = 0; count < 4; count += 1) await savePatient(sender, `${seed}-${count}`);
    await untilDone(sender, server);
    const one = await openPhone();
    await untilDone(one, server);
    const other = await anotherTab(one);
    scatter(server, random);
    for (let step = 0; step < 3; step += 1) {
      if (random() < 0.5) server.scope = server.scope === 'all' ? 'theatre' : 'all';
      else server.restore(Math.floor(random() * (server.records.length + 1)));
      if (random() < 0.5) await savePatient(one, `${seed}-new-${step}`);
      await Promise.all([drain(one, server, noLocks), drain(other, server, noLocks)]);
    }
    const held = new Set(ids([...one.records.get(), ...other.records.get()]));
    for (const ledger of [one, other, one]) await untilDone(ledger, server);
    const { ids: here, staging, waiting } = await stored(one);
    assert.deepEqual(here, ids(server.records), `seed ${seed}`);
    assert.deepEqual([...held].filter(id => !here.includes(id)), [], `seed ${seed}`);
    assert.deepEqual([staging, waiting], [null, 0], `seed ${seed}`);
    for (const ledger of [sender, one, other]) ledger.close();
  }
});
