import assert from 'node:assert/strict';
import { test } from 'node:test';
import { apartName, question, twinsOf } from '../../../static/app/planning/twins.js';

const patient = (id, version = id, supersedes = []) => ({ id: version, kind: 'patient', patient: id, supersedes, body: { schema: 1, full_name: `${id} ${version}`, born_on: '2019-04-02', hospital_number: id, note: 'shy' } });
const PAIR = { first: 'a', second: 'b', likeness: 'same_number' };
const never = () => false;

test('everybody is asked about once, by what identifies them at present, in one order', () => {
  const records = [patient('b'), patient('a'), patient('a', 'a2', ['a'])];
  const told = (id, full_name) => ({ id, body: { schema: 1, full_name, born_on: '2019-04-02', hospital_number: id } });
  assert.deepEqual(question(records), { patients: [told('a', 'a a2'), told('b', 'b b')] });
});

test('a pair is told to both', () => {
  const twins = twinsOf([patient('a'), patient('b')], [PAIR], never);
  assert.deepEqual([...twins], [['a', [{ other: 'b', likeness: 'same_number' }]], ['b', [{ other: 'a', likeness: 'same_number' }]]]);
});

test('who is joined, who was parted and who was said to be two is not asked about again', () => {
  const join = { id: 'j', kind: 'join', patient: 'a', supersedes: [], body: { patient_a: 'a', patient_b: 'b', reason: 'Same.' } };
  const parted = { id: 'r', kind: 'retraction', patient: 'a', supersedes: [], body: { record_id: 'j', reason: 'Cousins.' } };
  const two = [patient('a'), patient('b')];
  assert.equal(twinsOf([...two, join], [PAIR], never).size, 0);
  assert.equal(twinsOf([...two, join, parted], [PAIR], never).size, 0);
  assert.equal(twinsOf(two, [PAIR], (one, other) => apartName(one, other) === apartName('b', 'a')).size, 0);
});
