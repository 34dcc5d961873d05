import assert from 'node:assert/strict';
import { test } from 'node:test';
import { candidates, heldOf, listOf, listQuestion, listsOf, moved, named, stateOf } from '../../../static/app/preparing/lists.js';

let next = 0;
const record = (kind, patient, body, supersedes = []) => {
  const id = `id-${String((next += 1)).padStart(3, '0')}`;
  return { id, kind, patient: patient ?? id, body, supersedes, digest: `digest of ${id}` };
};

function line(name) {
  const patient = record('patient', null, { full_name: name });
  const plan = record('plan', patient.id, { patient_id: patient.id, examination_id: 'none' });
  const signature = record('signature', patient.id, { plan_id: plan.id, plan_digest: plan.digest });
  return { patient, plan, signature, entry: { patient_id: patient.id, plan_id: plan.id, duration_min: 45, note: '' } };
}
const day = (on, ...entries) => ({ schema: 1, on, team: 'Harbour', place: '', starts_at: '08:00', entries });

test('an entry moves one place and stops at either end', () => {
  assert.deepEqual(moved(['a', 'b', 'c'], 0, 1), ['b', 'a', 'c']);
  assert.deepEqual(moved(['a', 'b', 'c'], 2, -1), ['a', 'c', 'b']);
  assert.deepEqual(moved(['a', 'b', 'c'], 0, -1), ['a', 'b', 'c']);
  assert.deepEqual(moved(['a', 'b', 'c'], 2, 1), ['a', 'b', 'c']);
});

test('lists come by day, and two versions made apart are one list in conflict', () => {
  const later = record('operating_list', null, day('2026-12-02'));
  const first = record('operating_list', null, day('2026-12-01'));
  const one = record('operating_list', first.id, day('2026-12-01'), [first.id]);
  const other = record('operating_list', first.id, day('2026-12-01'), [first.id]);
  const lists = listsOf([later, first, one, other]);

  assert.deepEqual(lists.map(({ id, conflict }) => [id, conflict]), [[first.id, true], [later.id, false]]);
  assert.equal(listOf([later, first, one, other], first.id).current.id, other.id);
});

test('what is held of an entry says whether its plan still stands', () => {
  const { patient, plan, signature, entry } = line('Ana');
  const all = [patient, plan, signature];
  const newer = record('plan', patient.id, plan.body, [plan.id]);
  const back = record('retraction', patient.id, { record_id: signature.id });

  assert.equal(heldOf(all, entry).standing, 'current');
  assert.equal(heldOf([...all, newer], entry).standing, 'replaced');
  assert.equal(heldOf([...all, back], entry).signature, null);
  assert.equal(heldOf([plan], entry), null);
});

test('the engine is asked with one answer for each entry, null where nothing is held', () => {
  const { patient, plan, signature, entry } = line('Ana');
  const absent = { ...entry, plan_id: 'elsewhere' };
  const setUp = record('set_up', patient.id, { plan_id: plan.id, plan_digest: plan.digest, on: '2026-12-01' });
  const { held, practice } = listQuestion([patient, plan, signature, setUp], day('2026-12-01', entry, absent), null);

  assert.deepEqual(held[0], { patient: patient.body, plan: plan.body, signature: signature.body, set_up: setUp.body, standing: 'current' });
  assert.equal(held[1], null);
  assert.equal(practice, null);
});

test('signed plans are offered before those that nobody signed', () => {
  const zoe = line('Zoë');
  const ana = line('Ana');
  const offered = candidates([ana.patient, ana.plan, zoe.patient, zoe.plan, zoe.signature]);

  assert.deepEqual(offered.map(({ patient }) => patient.body.full_name), ['Zoë', 'Ana']);
});

test('two versions are compared by names, not by ids', () => {
  const { patient, entry } = line('Ana');

  assert.deepEqual(named([patient], day('2026-12-01', entry)).entries.map(({ plan_id }) => plan_id), ['Ana']);
  assert.deepEqual(named([], day('2026-12-01', entry)).entries.map(({ plan_id }) => plan_id), ['not on this device']);
});

test('what a list follows from is another once a set-up is saved, a plan replaced or a record missing, and by nothing else', () => {
  const { patient, plan, signature, entry } = line('Ana');
  const list = record('operating_list', null, day('2026-12-01', entry));
  const all = [patient, plan, signature, list];
  const before = stateOf(all, list);
  const setUp = record('set_up', patient.id, { plan_id: plan.id, plan_digest: plan.digest });
  const newer = record('plan', patient.id, plan.body, [plan.id]);
  for (const change of [setUp, newer]) assert.notEqual(stateOf([...all, change], list), before, change.kind);
  assert.notEqual(stateOf([list], list), before);
  assert.equal(stateOf([...all, ...Object.values(line('Bea')).filter(({ id }) => id)], list), before);
});

test('a list is asked with what is newer than the signature and with the other entry of a person who was entered twice', () => {
  const { patient, plan, signature, entry } = line('Ana');
  const now = record('patient', patient.id, { full_name: 'Ana', allergies: 'latex' }, [patient.id]);
  const twin = record('patient', null, { full_name: 'Ana', allergies: 'iodine' });
  const join = record('join', patient.id, { patient_a: patient.id, patient_b: twin.id });
  const list = record('operating_list', null, day('2026-12-01', entry));
  const all = [patient, plan, signature, list];
  const [held] = listQuestion([...all, now, twin, join], list.body, null).held;

  assert.deepEqual([held.patient_now.allergies, held.other_entries.map(({ allergies }) => allergies)], ['latex', ['iodine']]);
  assert.equal('patient_now' in listQuestion(all, list.body, null).held[0], false);
  assert.notEqual(stateOf([...all, twin, join], list), stateOf([...all, twin], list));
});
