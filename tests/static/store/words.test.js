/** The clinic's word lies beside the sealed record, which is not written again for it; it stays with the record whatever happens. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drain } from '../../../static/app/sync/drain.js';
import { clinic } from '../support/clinic.mjs';
import { dump } from '../support/dump.mjs';
import { openPhone, savePatient, verdict } from '../support/phone.mjs';
import { within } from '../support/within.mjs';

const noLocks = { locks: null };
const words = records => records.map(({ id, position, received_at, receipt }) => [id, position, received_at, receipt]).sort();
const ACCEPTED = { status: 'accepted', position: 1, received_at: '2026-11-25T10:00:00+00:00', receipt: 'r1' };

async function again(ledger) {
  return openPhone({ author: ledger.author, place: ledger.place_, device: ledger.device });
}

async function rowsOf(ledger, store) {
  return (await dump(ledger.name)).stores[store].rows.map(([, row]) => row);
}

test('a sealed record is not written again when the clinic has it, and is shown with its word when opened anew', async () => {
  const ledger = await openPhone();
  const { patient } = await savePatient(ledger);
  const before = await rowsOf(ledger, 'records');
  await ledger.settle([verdict(ledger, patient.id, 'sent', ACCEPTED)]);
  assert.deepEqual(await rowsOf(ledger, 'records'), before);
  const [{ position, received_at, receipt }] = (await again(ledger)).records.get().filter(({ id }) => id === patient.id);
  assert.deepEqual([position, received_at, receipt], [1, ACCEPTED.received_at, 'r1']);
});

test('an answer without a receipt leaves the one that the record came with', async () => {
  const server = clinic();
  const ledger = await openPhone();
  const { patient } = await savePatient(ledger);
  await drain(ledger, server, noLocks);
  const { receipt } = ledger.find(patient.id);
  assert.ok(receipt);
  const page = { records: [ledger.find(patient.id)], removed: [], after: (await ledger.place()).cursor, cursor: 'later', more: false };
  await ledger.takeIn(page);
  await ledger.settle([verdict(ledger, patient.id, 'sent', { ...ACCEPTED, receipt: null })]);
  assert.equal((await again(ledger)).find(patient.id).receipt, receipt);
});

test('another tab shows the word, too', async () => {
  const ledger = await openPhone();
  const { patient } = await savePatient(ledger);
  const other = await again(ledger);
  await ledger.settle([verdict(ledger, patient.id, 'sent', ACCEPTED)]);
  assert.equal(ledger.find(patient.id).receipt, 'r1');
  await within(() => assert.deepEqual(words([other.find(patient.id)]), words([ledger.find(patient.id)])));
});

test('what is removed leaves no word behind', async () => {
  const server = clinic();
  const ledger = await openPhone();
  const { patient, examination } = await savePatient(ledger);
  await drain(ledger, server, noLocks);
  const after = (await ledger.place()).cursor;
  await ledger.takeIn({ records: [], removed: [examination.id], after, cursor: 'later', more: false });
  assert.deepEqual((await rowsOf(ledger, 'words')).flatMap(({ said }) => said).map(({ id }) => id), [patient.id]);
  await ledger.takeIn({ records: [], removed: [patient.id], after: 'later', cursor: 'last', more: false });
  assert.deepEqual(await rowsOf(ledger, 'words'), []);
});

test('many words of single records are gathered when the records are opened, and none is lost', async () => {
  const ledger = await openPhone();
  for (let position = 1; position <= 120; position += 1) {
    const { id } = await ledger.save('patient', { body: { schema: 1, position } });
    await ledger.settle([verdict(ledger, id, 'sent', { ...ACCEPTED, position, receipt: `r${position}` })]);
  }
  const before = words(ledger.records.get());
  assert.equal((await rowsOf(ledger, 'words')).length, 120);
  assert.deepEqual(words((await again(ledger)).records.get()), before);
  assert.equal((await rowsOf(ledger, 'words')).length, 1);
  assert.deepEqual(words((await again(ledger)).records.get()), before);
});

test('where a restored clinic lacks a record, its word stays with it, and the next one takes its place', async () => {
  const ledger = await openPhone();
  const { patient, examination } = await savePatient(ledger);
  await ledger.settle([patient, examination].map(({ id }, at) => verdict(ledger, id, 'sent', { ...ACCEPTED, position: at + 1, receipt: `r${at}` })));
  await ledger.startStaging({ restored: true });
  const anew = { ...ledger.find(patient.id), position: 7, receipt: 'anew' };
  await ledger.stage({ records: [anew], removed: [], after: '', cursor: 'new-1' });
  await ledger.swap('new-1');
  const opened = await again(ledger);
  assert.deepEqual([opened.find(patient.id).position, opened.find(patient.id).receipt], [7, 'anew']);
  assert.deepEqual([opened.find(examination.id).position, opened.find(examination.id).receipt], [2, 'r1']);
  assert.deepEqual(await rowsOf(ledger, 'words'), []);
  await opened.settle([verdict(opened, examination.id, 'sent', { ...ACCEPTED, position: 8, receipt: 'r8' })]);
  assert.deepEqual([(await again(ledger)).find(examination.id).position, opened.find(examination.id).receipt], [8, 'r8']);
});
