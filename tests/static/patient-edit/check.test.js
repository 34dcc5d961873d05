import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Refused, refusal } from '../../../static/app/engine/refused.js';
import { checkBody } from '../../../static/app/screens/patient-edit/check.js';

const FAULT = { code: 'too_long', text: 'Too long.', field: 'hospital_number', value: 'x', allowed: '1 to 40 characters' };
const check = (ask) => checkBody('patient', { schema: 1 }, { ask, patience_ms: 20 });

test('the engine is asked for the body of that kind', async () => {
  let asked;
  const answer = await check(async (name, payload) => (asked = [name, payload]) && {});
  assert.deepEqual(asked, ['check', { kind: 'patient', body: { schema: 1 } }]);
  assert.deepEqual(answer, { faults: [], checked: true });
});

test('what the engine refuses keeps the record from being saved', async () => {
  const answer = await check(() => Promise.reject(new Refused([FAULT])));
  assert.deepEqual(answer, { faults: [FAULT], checked: true });
});

test('an engine that does not answer in time lets the record be saved unchecked', async () => {
  assert.deepEqual(await check(() => new Promise(() => {})), { faults: [], checked: false });
});

test('an engine that failed lets the record be saved unchecked', async () => {
  assert.deepEqual(await check(() => Promise.reject(refusal('engine_failed', 'It stopped.'))), { faults: [], checked: false });
});
