import assert from 'node:assert/strict';
import { test } from 'node:test';
import { digest } from '../../../static/app/store/canonical.js';
import { envelope, localTime } from '../../../static/app/store/envelope.js';

const from = { clinic: 'c', author: 'noor', device: 'd' };

test("a new patient's record is its own patient", async () => {
  const record = await envelope({ kind: 'patient', body: { schema: 1 }, from });
  assert.equal(record.patient, record.id);
  assert.deepEqual(record.supersedes, []);
});

test("a clinic's new dose table stands by itself, a later version names the first", async () => {
  const first = await envelope({ kind: 'dose_table', body: { id: 'ours' }, from });
  assert.equal(first.patient, first.id);
  assert.equal((await envelope({ kind: 'dose_table', patient: first.id, supersedes: [first.id], body: { id: 'ours' }, from })).patient, first.id);
});

test('a record of another kind without its patient is refused', async () => {
  await assert.rejects(envelope({ kind: 'examination', body: {}, from }), TypeError);
});

test('a record cannot be changed after it is made, and its digest is that of its body', async () => {
  const body = { schema: 1, readings: [{ horizontal_pd: 40, vertical_pd: undefined }] };
  const record = await envelope({ kind: 'examination', patient: 'p', supersedes: ['e0'], body, from });
  assert.throws(() => (record.body.readings[0].horizontal_pd = 45), TypeError);
  body.readings[0].horizontal_pd = 45;
  assert.deepEqual(record.body, { schema: 1, readings: [{ horizontal_pd: 40 }] });
  assert.equal(record.digest, await digest(record.body));
});

for (const [zone, text] of [
  ['Europe/Brussels', '2026-07-01T09:30:00+02:00'],
  ['America/St_Johns', '2026-07-01T05:00:00-02:30'],
  ['Asia/Kathmandu', '2026-07-01T13:15:00+05:45'],
  ['UTC', '2026-07-01T07:30:00+00:00'],
]) {
  test(`in ${zone} the time is told with the offset of that place`, () => {
    const before = process.env.TZ;
    process.env.TZ = zone;
    assert.equal(localTime(new Date('2026-07-01T07:30:00Z')), text);
    process.env.TZ = before ?? '';
    if (before === undefined) delete process.env.TZ;
  });
}
