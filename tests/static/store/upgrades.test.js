/**
 * What earlier versions of the app left on phones (`fixtures/phone/`, each written by the code of its time), opened with today's:
 * nothing is lost, and work goes on. `ledger-1`: the first version; `ledger-2`: with what is kept; `ledger-2-carrying`: with the
 * receipts, the second way to the keys and what is carried, which needed no new stores; `ledger-3`: with the clinic's word on what was
 * sent in rows of its own.
 */
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { openDevice } from '../../../static/app/store/device.js';
import { DEVICE_STEPS, LEDGER_STEPS } from '../../../static/app/store/schema.js';
import { dump, restore } from '../support/dump.mjs';
import { phone, SECRET } from '../support/phone.mjs';

const FOLDER = new URL('../../../fixtures/phone/', import.meta.url);
const read = name => JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8'));
const named = start => readdirSync(FOLDER).filter(name => name.startsWith(start)).sort();
const DEVICE = '0197c0de-0000-7000-8000-00000000d1ce';

let opened = 0;

async function fromDump(name) {
  const place = `#dumped${(opened += 1)}`;
  const ledger = phone({ place, device: DEVICE });
  await restore(ledger.name, read(name));
  return ledger;
}

test('every version of the databases is frozen, the present one included', () => {
  const versions = start => [...new Set(named(start).map(name => read(name).version))];
  assert.deepEqual(versions('ledger'), LEDGER_STEPS.map((_step, index) => index + 1));
  assert.deepEqual(versions('device'), DEVICE_STEPS.map((_step, index) => index + 1));
});

for (const name of named('ledger')) {
  test(`${name}: everything is there`, async () => {
    const ledger = await fromDump(name);
    await ledger.unlock(SECRET);
    const by = Object.groupBy(ledger.records.get(), ({ kind }) => kind);
    assert.deepEqual(by.patient.map(({ body }) => body.full_name).sort(), ['Ilse Vantongeren', 'Tomas Quill', 'Tomas Quill']);
    assert.deepEqual(by.examination.map(({ body }) => body.readings[0].horizontal_pd), [40, 40]);
    assert.deepEqual(ledger.records.get().map(({ position }) => position).sort(), [1, 2, null, null, null]);
    assert.deepEqual([...ledger.outbox.get()].map(({ state, text }) => [state, text]), [
      ['waiting', ''], ['waiting', ''], ['attention', 'Too long.'],
    ]);
    assert.deepEqual(ledger.drafts.get('examination/x'), { typed: 'half' });
    const { cursor, complete, lastHeard } = await ledger.place();
    assert.deepEqual([cursor, complete, lastHeard], ['cursor-2', true, '2026-11-25T10:00:02.000Z']);
    assert.deepEqual(ledger.broken.get(), []);
  });

  test(`${name}: work goes on, with all that today's version has`, async () => {
    const ledger = await fromDump(name);
    await ledger.unlock(SECRET);
    const saved = await ledger.save('patient', { body: { schema: 1, full_name: 'Sunniva Ekholm' } });
    ledger.kept.keep('card/y', 1);
    await ledger.kept.flush();
    await ledger.keepCarryingKey('ab'.repeat(32));
    assert.match((await ledger.tags([saved]))[0], /^[0-9a-f]{64}$/);
    assert.ok(await ledger.recoveryDue());
    assert.equal((await dump(ledger.name)).version, LEDGER_STEPS.length);
    ledger.close();
    const again = phone({ place: ledger.place_, device: DEVICE });
    await again.unlock(SECRET);
    assert.equal(again.records.get().length, 6);
    assert.equal(again.outbox.get().length, 4);
  });
}

for (const name of named('device')) {
  test(`${name}: the phone knows who it is and who uses it`, async () => {
    const place = `device#dumped${(opened += 1)}`;
    await restore(place, read(name));
    const device = openDevice({ name: place });
    assert.match((await device.identity()).id, /^[0-9a-f-]{36}$/);
    assert.deepEqual([(await device.identity()).id, (await device.get('account')).user.username, await device.get('autoLock_min')], [
      read(name).stores.facts.rows.find(([key]) => key === 'device')[1].id, 'noor', 5,
    ]);
  });
}
