import assert from 'node:assert/strict';
import { test } from 'node:test';
import { digest } from '../../../static/app/store/canonical.js';
import { heads } from '../../../static/app/store/heads.js';
import { inPlaceOf, nextBatch } from '../../../static/app/store/outbox.js';
import { openPhone, PATIENT, savePatient, verdict } from '../support/phone.mjs';
import { within } from '../support/within.mjs';

const refuse = (ledger, id) => ledger.settle([verdict(ledger, id, 'attention', { status: 'rejected', code: 'too_long', text: 'Too long.' })]);
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

const anotherTab = ledger => openPhone({ place: ledger.place_, device: ledger.device });
const states = ledger => ledger.outbox.get().map(({ state, text }) => [state, text]);
const correct = (ledger, { id }) => ledger.save('patient', { patient: id, supersedes: [id], body: { ...PATIENT, hospital_number: 'Q-1' } });

async function correctAMinuteLater(t, ledger, refused) {
  t.mock.timers.enable({ apis: ['Date'], now: Date.now() + 60_000 });
  const corrected = await correct(ledger, refused);
  t.mock.timers.reset();
  assert.equal(corrected.id, refused.id);
}

/** A tab that is not told what others do, as for the moment until it is. */
async function deafTab(ledger) {
  const Channel = globalThis.BroadcastChannel;
  globalThis.BroadcastChannel = class {
    postMessage() {}
    close() {}
  };
  try {
    return await anotherTab(ledger);
  } finally {
    globalThis.BroadcastChannel = Channel;
  }
}

for (const to of ['sent', 'attention']) {
  test(`a late answer about the refused record says nothing of its correction from another tab: ${to}`, async t => {
    const here = await openPhone();
    const { patient } = await savePatient(here);
    const late = verdict(here, patient.id, to, { status: 'any', position: 1, text: 'Too late.' });
    const there = await anotherTab(here);
    await refuse(there, patient.id);
    await correctAMinuteLater(t, there, patient);

    const { cursor } = await here.place();
    assert.equal(await here.settle([late], { after: cursor, cursor: 'beyond' }), false);
    for (const tab of [here, there, await anotherTab(here)]) {
      await within(() => {
        assert.deepEqual(states(tab), [['waiting', ''], ['waiting', '']]);
        assert.deepEqual([tab.find(patient.id).body.hospital_number, tab.find(patient.id).position], ['Q-1', null]);
      });
    }
  });
}

test('a correction of what another tab has sent again meanwhile is a new version: the clinic may have the other by now', async () => {
  const here = await openPhone();
  const { patient, examination } = await savePatient(here);
  await refuse(here, patient.id);
  const there = await deafTab(here);
  await here.retry(patient.id);
  const corrected = await correct(there, patient);

  assert.notEqual(corrected.id, patient.id);
  assert.deepEqual(corrected.supersedes, [patient.id]);
  assert.deepEqual(toSend(await anotherTab(here)), [patient.id, examination.id, corrected.id]);
});

const BROUGHT_BY = {
  'a page of the feed': (ledger, page) => ledger.takeIn({ ...page, more: false }),
  'a new feed': async (ledger, page) => {
    await ledger.startStaging({ restored: false });
    await ledger.stage(page);
    await ledger.swap(page.cursor);
  },
};

for (const [way, bring] of Object.entries(BROUGHT_BY)) {
  test(`the clinic's copy of a refused record does not push aside the correction that another tab has just made, in ${way}`, async t => {
    const here = await openPhone();
    const { patient } = await savePatient(here);
    await refuse(here, patient.id);
    const there = await deafTab(here);
    await correctAMinuteLater(t, here, patient);

    const copy = { ...there.find(patient.id), position: 1, received_at: 'then' };
    await bring(there, { records: [copy], removed: [], after: '', cursor: 'feed-1:1' });
    const again = await anotherTab(here);
    assert.equal(again.find(patient.id).body.hospital_number, 'Q-1');
    assert.deepEqual(states(again), [['waiting', ''], ['waiting', '']]);
  });
}
