import assert from 'node:assert/strict';
import { test } from 'node:test';
import { nextBatch } from '../../../static/app/store/outbox.js';
import { openPhone, PATIENT } from '../support/phone.mjs';

const ELSEWHERE = '0192f0c1-0000-7000-8000-000000000007';

test('what is brought from elsewhere is saved and sent under its own id, as this person’s', async () => {
  const ledger = await openPhone();
  const patient = await ledger.save('patient', { id: ELSEWHERE, patient: ELSEWHERE, body: PATIENT });

  assert.deepEqual([patient.id, patient.patient, patient.author], [ELSEWHERE, ELSEWHERE, ledger.author]);
  assert.deepEqual(nextBatch(ledger.outbox.get(), ledger.find).map(({ id }) => id), [ELSEWHERE]);
});
