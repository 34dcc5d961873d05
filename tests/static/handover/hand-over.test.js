import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { FOLLOWING, FOR_ALL_THEATRE, ofCards } from '../../../static/app/handover/contents.js';
import { hmacKey, tagOf } from '../../../static/app/store/carrying.js';
import { nextBatch } from '../../../static/app/store/outbox.js';
import { push } from '../../../static/app/sync/push.js';
import { pull } from '../../../static/app/sync/pull.js';
import { clinic } from '../support/clinic.mjs';
import { give, seen, take, WORDS } from '../support/hand.mjs';
import { openPhone, PATIENT, phone, rawText, savePatient, SECRET, verdict } from '../support/phone.mjs';

const KEY = 'ab'.repeat(32);

/** A surgeon's phone that the clinic gave its carrying key. */
async function sealingPhone(options) {
  const ledger = await openPhone(options);
  await ledger.keepCarryingKey(KEY);
  return ledger;
}

const refuse = (ledger, id) => ledger.settle([verdict(ledger, id, 'attention', { status: 'rejected', code: 'too_long', text: 'Too long.' })]);
const toSend = ledger => nextBatch([...ledger.outbox.get()], ledger.find).map(({ id }) => id);

test('what one phone made without a network is on the other at once, and told whose it is', async () => {
  const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  const { patient, examination } = await savePatient(noor);
  const told = await take(bilal, await give(noor));

  assert.deepEqual([told.count, told.taken, told.here, told.carried, told.stuck], [2, 2, 0, 2, 0]);
  assert.equal(told.from.full_name, 'Dr Noor Haddad');
  assert.deepEqual(seen(bilal), seen(noor));
  assert.equal(bilal.find(patient.id).body.full_name, PATIENT.full_name);
  assert.deepEqual(bilal.outbox.get().map(({ id, state, carried }) => [id, state, carried.maker]), [
    [patient.id, 'waiting', 'Dr Noor Haddad'], [examination.id, 'waiting', 'Dr Noor Haddad'],
  ]);
});

test('it is still so after a restart', async () => {
  const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  await savePatient(noor);
  await take(bilal, await give(noor));
  bilal.close();
  const again = phone({ author: 'bilal', place: bilal.place_, device: bilal.device });
  await again.unlock(SECRET);
  assert.deepEqual(seen(again), seen(noor));
  assert.deepEqual(again.outbox.get().map(({ carried }) => carried.maker), ['Dr Noor Haddad', 'Dr Noor Haddad']);
});

test('a file taken twice, or files in any order, do nothing twice', async () => {
  const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  await savePatient(noor);
  const first = await give(noor);
  await savePatient(noor, 'Tomas Quill');
  const second = await give(noor);

  await take(bilal, second);
  const after = [seen(bilal), bilal.outbox.get()];
  const told = [await take(bilal, first), await take(bilal, second)];
  assert.deepEqual(told.map(({ taken, here }) => [taken, here]), [[0, 2], [0, 4]]);
  assert.deepEqual([seen(bilal), bilal.outbox.get()], after);
});

test('work goes both ways, and both phones hold the same', async () => {
  const [noor, bilal] = [await sealingPhone(), await sealingPhone({ author: 'bilal' })];
  await savePatient(noor);
  await savePatient(bilal, 'Tomas Quill');
  const [hers, his] = [await give(noor), await give(bilal)];
  await take(bilal, hers);
  await take(noor, his);
  assert.deepEqual(seen(noor), seen(bilal));
  assert.equal(seen(noor).size, 4);
});

test('the bearer brings it to the clinic with the seal; the maker then learns that it is there', async () => {
  const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  const { patient } = await savePatient(noor);
  await take(bilal, await give(noor));
  const site = clinic();
  /** @type {any[]} */
  const sent = [];
  site.before = (what, body) => void (what === 'push' && sent.push(...body.records));
  // The invented clinic keeps no seal with a record, as the real one does not.
  const receive = site.receive;
  site.receive = ({ seal: _seal, ...record }) => receive.call(site, record);
  await push(bilal, site);

  assert.deepEqual(bilal.outbox.get(), []);
  assert.equal(sent[0].seal, await tagOf(await hmacKey(KEY), noor.find(patient.id)));
  assert.deepEqual([sent[0].author, sent[0].device], ['noor', noor.device]);

  await push(noor, site);
  await pull(noor, site);
  assert.deepEqual(noor.outbox.get(), []);
  assert.equal(site.records.length, 2);
  assert.deepEqual(seen(noor), seen(bilal));
});

test('the seal is the HMAC of the canonical envelope', async () => {
  // Computed with Python's hmac and json (sorted keys, no blanks).
  const record = {
    id: '0197c0de-0000-7000-8000-000000000001', kind: 'patient', clinic: 'c', patient: '0197c0de-0000-7000-8000-000000000001',
    author: 'noor', device: 'd', recorded_at: '2026-11-25T09:30:00+01:00', supersedes: ['b', 'a'], body: {}, digest: 'f',
  };
  assert.equal(await tagOf(await hmacKey('00'.repeat(32)), record), '836fead636e81d5cdb09799822a756adc48a536fd9dbd3bf68136ced54fc5e19');
});

test('without a key of the clinic it is shown and waits for its own phone, with all that mentions it', async () => {
  const [noor, bilal] = [await openPhone(), await openPhone({ author: 'bilal' })];
  const { patient } = await savePatient(noor);
  const told = await take(bilal, await give(noor));
  await bilal.save('examination', { patient: patient.id, body: { schema: 1, examined_on: '2026-11-25', readings: [] } });
  const other = await savePatient(bilal, 'Tomas Quill');

  assert.deepEqual([told.carried, told.stuck], [0, 2]);
  assert.deepEqual(toSend(bilal), [other.patient.id, other.examination.id]);

  await noor.keepCarryingKey(KEY);
  await take(bilal, await give(noor));
  assert.equal(toSend(bilal).length, 5);
});

test('what the clinic refused to its maker is not offered by the bearer; the correction takes its place', async () => {
  const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  const { patient } = await savePatient(noor);
  await refuse(noor, patient.id);
  await take(bilal, await give(noor));
  assert.deepEqual(toSend(bilal), []);

  await noor.save('patient', { patient: patient.id, supersedes: [patient.id], body: { ...PATIENT, hospital_number: 'Q-1' } });
  await take(bilal, await give(noor));
  assert.equal(bilal.find(patient.id).body.hospital_number, 'Q-1');
  assert.equal(toSend(bilal).length, 2);
  assert.deepEqual(seen(bilal), seen(noor));
});

test('an older file does not bring back what was corrected', async () => {
  const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  const { patient } = await savePatient(noor);
  await refuse(noor, patient.id);
  const older = await give(noor);
  await new Promise(resolve => setTimeout(resolve, 1100)); // records tell whole seconds
  await noor.save('patient', { patient: patient.id, supersedes: [patient.id], body: { ...PATIENT, hospital_number: 'Q-1' } });
  await take(bilal, await give(noor));
  await take(bilal, older);
  assert.equal(bilal.find(patient.id).body.hospital_number, 'Q-1');
});

test('the clinic’s copy takes the place of a carried one, whatever was carried', async () => {
  const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  const { patient } = await savePatient(noor);
  await take(bilal, await give(noor));
  await refuse(noor, patient.id);
  await noor.save('patient', { patient: patient.id, supersedes: [patient.id], body: { ...PATIENT, hospital_number: 'Q-1' } });
  const site = clinic();
  await push(noor, site);
  await pull(bilal, site);
  assert.equal(bilal.find(patient.id).body.hospital_number, 'Q-1');
  assert.deepEqual(bilal.outbox.get(), []);
});

test('what the clinic has comes with its place and is not sent again', async () => {
  const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  await savePatient(noor);
  const site = clinic();
  await push(noor, site);
  const told = await take(bilal, await give(noor, { choice: 'all' }));
  assert.deepEqual([told.taken, told.carried], [2, 0]);
  assert.deepEqual(bilal.outbox.get(), []);
  assert.deepEqual(bilal.records.get().map(({ position }) => position), [1, 2]);
});

test('unsent work goes with all that is known of the same patients, and with nothing of others', async () => {
  const noor = await sealingPhone();
  const one = await savePatient(noor);
  await savePatient(noor, 'Tomas Quill');
  await push(noor, clinic());
  await noor.save('examination', { patient: one.patient.id, body: { schema: 1, examined_on: '2026-11-25', readings: [] } });
  const { count } = await give(noor);
  const { count: all } = await give(noor, { choice: 'all' });
  assert.deepEqual([count, all], [3, 5]);
});

test('one record goes with its patient', async () => {
  const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  const { patient, examination } = await savePatient(noor);
  await savePatient(noor, 'Tomas Quill');
  await take(bilal, await give(noor, { choice: { record: examination.id } }));
  assert.deepEqual([...seen(bilal).keys()], [patient.id, examination.id]);
});

test('a file name tells the time and nothing of a patient', async () => {
  const noor = await sealingPhone();
  await savePatient(noor);
  assert.match((await give(noor)).name, /^hand-over-\d{4}-\d\d-\d\d-\d{4}\.ppcarry$/);
});

test('nothing to give is said', async () => {
  await assert.rejects(give(await openPhone()), { code: 'nothing_to_give' });
});

for (const [why, code, spoil] of [
  ['wrong words', 'wrong_passphrase', file => [file, { passphrase: WORDS.replace('anchor', 'apple') }]],
  ['a damaged file', 'file_damaged', ({ bytes }) => [{ bytes: bytes.map((byte, index) => (index === bytes.length - 1 ? byte ^ 1 : byte)) }]],
  ['half a file', 'file_damaged', ({ bytes }) => [{ bytes: bytes.slice(0, -5) }]],
  ['another file', 'file_foreign', () => [{ bytes: new TextEncoder().encode('a holiday picture, perhaps') }]],
]) {
  test(`${why}: refused in words, and nothing changes`, async () => {
    const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
    await savePatient(noor);
    await savePatient(bilal, 'Tomas Quill');
    const before = [seen(bilal), bilal.outbox.get()];
    await assert.rejects(take(bilal, ...spoil(await give(noor))), fault => fault.code === code && fault.text.length > 20);
    assert.deepEqual([seen(bilal), bilal.outbox.get()], before);
  });
}

test('a file of another clinic is refused before the words are asked, and after', async () => {
  const [noor, stranger] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  await savePatient(noor);
  const file = await give(noor);
  const elsewhere = { ...stranger, clinic: '0197c0de-0000-7000-8000-00000000ffff' };
  await assert.rejects(take(elsewhere, file), { code: 'other_clinic' });
});

test('a record whose body is not that of its digest spoils the whole file', async () => {
  const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  const { patient } = await savePatient(noor);
  const forged = { ...noor, records: { get: () => noor.records.get().map(record => (record.id === patient.id ? { ...record, body: { ...PATIENT, allergies: '' } } : record)) } };
  await assert.rejects(take(bilal, await give(forged)), { code: 'file_damaged' });
  assert.equal(seen(bilal).size, 0);
});

test('a theatre tablet takes what cards are made of and nothing else', async () => {
  const [noor, mei] = [await sealingPhone(), await openPhone({ author: 'mei' })];
  const { patient, examination } = await savePatient(noor);
  await savePatient(noor, 'Tomas Quill');
  const plan = await noor.save('plan', { patient: patient.id, body: { examination_id: examination.id } });
  await noor.save('plan', { patient: patient.id, body: { examination_id: examination.id, note: 'never signed' } });
  const signature = await noor.save('signature', { patient: patient.id, body: { plan_id: plan.id } });
  const told = await take(mei, await give(noor, { choice: 'all' }), { role: 'theatre' });

  assert.deepEqual([...seen(mei).keys()], [patient.id, plan.id, signature.id]);
  assert.deepEqual([told.count, told.taken, told.notHeld], [7, 3, 4]);
});

test('what theatre holds is what the clinic hands it', () => {
  const folder = new URL('../../../clinic/sync/kinds/', import.meta.url);
  const said = { ALL: [], OF_CARDS: [] };
  for (const file of readdirSync(folder).filter(name => name.endsWith('.py'))) {
    const [, scope] = /theatre=Theatre\.(\w+)/.exec(readFileSync(new URL(file, folder), 'utf8')) ?? [];
    if (scope) said[scope].push(file.replace('.py', ''));
  }
  assert.deepEqual(said.ALL.sort(), [...FOR_ALL_THEATRE].sort());
  assert.deepEqual(said.OF_CARDS.sort(), ['join', 'patient', 'plan', ...Object.keys(FOLLOWING)].sort());
  for (const [kind, field] of Object.entries(FOLLOWING)) {
    assert.match(readFileSync(new URL(`${kind}.py`, folder), 'utf8'), new RegExp(`return UUID\\(body\\.${field}\\)`));
  }
});

test('what follows a signed plan goes to theatre with it, what follows another does not', () => {
  const record = (id, kind, patient, body = {}, supersedes = []) => ({ id, kind, patient, body, supersedes });
  const records = [
    record('01', 'patient', 'P'), record('02', 'plan', 'P'), record('03', 'plan', 'P'), record('04', 'signature', 'P', { plan_id: '02' }),
    record('05', 'set_up', 'P', { plan_id: '02' }), record('06', 'set_up', 'P', { plan_id: '03' }), record('07', 'plan', 'P', {}, ['02']),
    record('08', 'operation', 'P', { signature_id: '04' }), record('09', 'adjustment', 'P', { operation_id: '08' }),
    record('10', 'retraction', 'P', { record_id: '09' }), record('11', 'retraction', 'P', { record_id: '06' }), record('12', 'patient', 'Q'),
    record('13', 'operating_list', '13'),
  ];
  assert.deepEqual([...ofCards(records)].sort(), ['01', '02', '04', '05', '07', '08', '09', '10', '13']);
});

test('of a person who was entered twice theatre is handed the other entry and the join, until they are parted', () => {
  const record = (id, kind, patient, body = {}, supersedes = []) => ({ id, kind, patient, body, supersedes });
  const records = [
    record('01', 'patient', 'P'), record('02', 'plan', 'P'), record('03', 'signature', 'P', { plan_id: '02' }), record('04', 'patient', 'Q'),
    record('05', 'join', 'Q', { patient_a: 'Q', patient_b: 'P' }), record('06', 'plan', 'Q'),
  ];
  const parted = [...records, record('07', 'retraction', 'Q', { record_id: '05' })];
  assert.deepEqual([...ofCards(records)].sort(), ['01', '02', '03', '04', '05']);
  assert.deepEqual([...ofCards(parted)].sort(), ['01', '02', '03']);
});

test('who lost a phone’s storage takes the own work back from a stick and sends it', async () => {
  const noor = await sealingPhone();
  await savePatient(noor);
  const file = await give(noor);
  const device = noor.device;
  await noor.erase();
  const afresh = await openPhone({ device });
  await take(afresh, file);
  const site = clinic();
  await push(afresh, site);
  assert.equal(site.records.length, 2);
});

test('nothing that was handed over lies in clear in the storage', async () => {
  const [noor, bilal] = [await sealingPhone(), await openPhone({ author: 'bilal' })];
  await savePatient(noor);
  await take(bilal, await give(noor));
  const raw = `${await rawText(bilal.name)} ${await rawText(noor.name)}`;
  for (const word of ['Vantongeren', 'Q-20417', '2019-04-02', 'latex', 'Haddad', KEY]) assert.ok(!raw.includes(word), word);
  const kept = Buffer.from(KEY, 'hex').toString('latin1');
  assert.ok(!raw.includes(kept));
});
