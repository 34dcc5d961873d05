import assert from 'node:assert/strict';
import { test } from 'node:test';
import { observable } from '../../../static/app/observable.js';
import { cardQuestion, createCardKeeper } from '../../../static/app/planning/card-keeper.js';

const record = (id, kind, body = {}) => ({ id, kind, patient: 'p1', supersedes: [], body, digest: `digest of ${id}` });
const patient = record('p1', 'patient', { full_name: 'Ilse Vantongeren' });
const plan = (number) => record(`l${number}`, 'plan', { patient_id: 'p1' });
const signature = (number) => record(`s${number}`, 'signature', { plan_id: `l${number}` });

const settled = () => new Promise((resolve) => setTimeout(resolve));

function device({ phase = 'ready', ask = async (name, { signature: body }) => ({ card: body.plan_id }) } = {}) {
  const book = new Map();
  const asked = [];
  const self = {
    book,
    asked,
    records: observable([]),
    engineState: observable({ phase }),
    drafts: { get: (name) => book.get(name), keep: (name, value) => book.set(name, value) },
    whenIdle: (work) => setTimeout(work),
    ask: (name, payload) => {
      asked.push(payload.signature.plan_id);
      return ask(name, payload);
    },
  };
  return Object.assign(self, createCardKeeper(self));
}

test('the card of a signed plan is made ahead, once', async () => {
  const phone = device();
  phone.start();
  phone.records.set([patient, plan(1), signature(1)]);
  await settled();
  await settled();
  phone.records.set([patient, plan(1), signature(1), record('x', 'examination')]);
  await settled();
  assert.deepEqual(phone.asked, ['l1']);
  assert.deepEqual(phone.keptCard({ patient, plan: plan(1), signature: signature(1) }), { card: 'l1' });
});

test('a kept card counts only for the very records it was made from', () => {
  const phone = device();
  const pieces = { patient, plan: plan(1), signature: signature(1) };
  phone.keep(pieces, { card: 'l1' });
  assert.deepEqual(phone.keptCard(pieces), { card: 'l1' });
  for (const kind of ['patient', 'plan', 'signature']) {
    assert.equal(phone.keptCard({ ...pieces, [kind]: { ...pieces[kind], digest: 'another' } }), null, kind);
  }
});

test('a kept card counts no longer once the person has another entry, whose present records are asked with', () => {
  const phone = device();
  const pieces = { patient, plan: plan(1), signature: signature(1) };
  const twin = { ...record('q1', 'patient', { allergies: 'iodine' }), patient: 'q1' };
  const again = { ...record('q2', 'patient', { allergies: 'penicillin' }), patient: 'q1', supersedes: ['q1'] };
  const join = { ...record('j1', 'join', { patient_a: 'q1', patient_b: 'p1' }), patient: 'q1' };
  phone.records.set([patient, plan(1), signature(1), twin, again]);
  phone.keep(pieces, { card: 'l1' });
  assert.deepEqual(phone.keptCard(pieces), { card: 'l1' });
  assert.equal('other_entries' in cardQuestion(phone.records.get(), pieces), false);
  phone.records.set([...phone.records.get(), join]);
  assert.equal(phone.keptCard(pieces), null);
  assert.deepEqual(cardQuestion(phone.records.get(), pieces).other_entries, [{ allergies: 'penicillin' }]);
});

test('a kept card counts no longer once the operation was prepared otherwise, and the engine is asked with it', () => {
  const phone = device();
  const pieces = { patient, plan: plan(1), signature: signature(1) };
  const setUp = record('u1', 'set_up', { plan_id: 'l1', plan_digest: 'digest of l1' });
  const ofAnother = record('u2', 'set_up', { plan_id: 'l2', plan_digest: 'digest of l2' });
  phone.records.set([patient, plan(1), signature(1), ofAnother]);
  phone.keep(pieces, { card: 'l1' });
  assert.deepEqual(phone.keptCard(pieces), { card: 'l1' });
  phone.records.set([...phone.records.get(), setUp]);
  assert.equal(phone.keptCard(pieces), null);
  assert.deepEqual(cardQuestion(phone.records.get(), pieces).set_up, setUp.body);
  phone.keep(pieces, { card: 'l1' });
  phone.records.set([...phone.records.get(), { ...record('c1', 'practice', { reason: 'ours' }), patient: 'c1' }]);
  assert.equal(phone.keptCard(pieces), null);
  assert.deepEqual(cardQuestion(phone.records.get(), pieces).practice, { reason: 'ours' });
});

test('nothing is asked before the engine is ready', async () => {
  const phone = device({ phase: 'starting' });
  phone.start();
  phone.records.set([patient, plan(1), signature(1)]);
  await settled();
  assert.deepEqual(phone.asked, []);
  phone.engineState.set({ phase: 'ready' });
  await settled();
  assert.deepEqual(phone.asked, ['l1']);
});

test('a card that the engine refuses keeps no other waiting and is not asked for again', async () => {
  const phone = device({
    ask: async (name, { signature: body }) => {
      if (body.plan_id === 'l2') throw new Error('refused');
      return { card: body.plan_id };
    },
  });
  phone.start();
  phone.records.set([patient, plan(1), signature(1), plan(2), signature(2)]);
  for (let turn = 0; turn < 6; turn += 1) await settled();
  assert.deepEqual([...phone.asked].sort(), ['l1', 'l2']);
  assert.deepEqual([...phone.book.keys()], ['card/s1']);
});

test('a card lacking its plan on this device is not made', async () => {
  const phone = device();
  phone.start();
  phone.records.set([patient, signature(1)]);
  await settled();
  assert.deepEqual(phone.asked, []);
});
