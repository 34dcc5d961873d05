import assert from 'node:assert/strict';
import { test } from 'node:test';
import { digest } from '../../../static/app/store/canonical.js';
import { heads } from '../../../static/app/store/heads.js';
import { inPlaceOf, nextBatch } from '../../../static/app/store/outbox.js';
import { openPhone, PATIENT, savePatient } from '../support/phone.mjs';

const refuse = (ledger, id) => ledger.settle([{ id, to: 'attention', answer: { id, status: 'rejected', code: 'too_long', text: 'Too long.' } }]);
const toSend = (ledger) => nextBatch(ledger.outbox.get(), ledger.find).map(({ id }) => id);

test('a correction of a refused patient is sent in its place, before what was made on that patient', async () => {
  const ledger = await openPhone();
  const { patient, examination } = await savePatient(ledger);
  await refuse(ledger, patient.id);
  assert.deepEqual(toSend(ledger), []);

  const body = { ...PATIENT, hospital_number: 'Q-1' };
  const corrected = await ledger.save('patient', { patient: patient.id, supersedes: [patient.id], body });

  assert.deepEqual([corrected.id, corrected.patient, corrected.supersedes], [patient.id, patient.id, []]);
  assert.equal(corrected.digest, await digest(body));
  assert.deepEqual(toSend(ledger), [patient.id, examination.id]);
  assert.deepEqual(heads(ledger.records.get(), 'patient').map(({ body: { hospital_number } }) => hospital_number), ['Q-1']);
});

test('the correction is what is there after a restart', async () => {
  const first = await openPhone();
  const { patient } = await savePatient(first);
  await refuse(first, patient.id);
  await first.save('patient', { patient: patient.id, supersedes: [patient.id], body: { ...PATIENT, hospital_number: 'Q-1' } });
  first.close();

  const second = await openPhone({ place: first.place_, device: first.device });
  assert.equal(second.find(patient.id).body.hospital_number, 'Q-1');
  assert.deepEqual(second.outbox.get().map(({ state, text }) => [state, text]), [['waiting', ''], ['waiting', '']]);
});

test('a correction of what only waits is a new version, as ever', async () => {
  const ledger = await openPhone();
  const { patient } = await savePatient(ledger);
  const corrected = await ledger.save('patient', { patient: patient.id, supersedes: [patient.id], body: PATIENT });
  assert.notEqual(corrected.id, patient.id);
  assert.deepEqual(corrected.supersedes, [patient.id]);
});

test('what the refused record superseded, and what else the correction does, is superseded by it', () => {
  const refused = { id: 'b', patient: 'P', supersedes: ['a'] };
  assert.deepEqual(inPlaceOf({ id: 'd', patient: 'P', supersedes: ['b', 'c', 'a'] }, refused).supersedes, ['a', 'c']);
});
