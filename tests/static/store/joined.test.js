import assert from 'node:assert/strict';
import { test } from 'node:test';
import { joinsOf, membersOf, rootOf, wereParted } from '../../../static/app/store/joined.js';

let made = 0;
const record = (kind, body, patient) => {
  const id = `r${String((made += 1)).padStart(3, '0')}`;
  return { id, kind, patient: patient ?? id, supersedes: [], body };
};
const [a, b, c, d] = ['A', 'B', 'C', 'D'].map(name => record('patient', { full_name: name }));
const join = (one, other) => record('join', { patient_a: one.id, patient_b: other.id, reason: 'Same child.' }, one.id);
const takenBack = target => record('retraction', { record_id: target.id, reason: 'Cousins.' }, target.patient);
const ids = (...records) => records.map(({ id }) => id);

test('who is joined with nobody stands alone', () => {
  assert.deepEqual([rootOf([a, b], a.id), membersOf([a, b], a.id), joinsOf([a, b], a.id)], [a.id, [a.id], []]);
});

test('two who are joined are one person under the first, from whichever side', () => {
  const joined = join(b, a);
  const all = [a, b, c, joined];
  for (const each of [a, b]) {
    assert.equal(rootOf(all, each.id), b.id);
    assert.deepEqual(membersOf(all, each.id), ids(b, a));
    assert.deepEqual(joinsOf(all, each.id), [joined]);
  }
  assert.equal(rootOf(all, c.id), c.id);
});

test('a join that is taken back parts them again, and they are known to be two', () => {
  const joined = join(a, b);
  const all = [a, b, joined, takenBack(joined)];
  assert.deepEqual([rootOf(all, b.id), membersOf(all, a.id), joinsOf(all, a.id)], [b.id, [a.id], []]);
  assert.deepEqual([wereParted(all, a.id, b.id), wereParted(all, b.id, a.id), wereParted(all, a.id, c.id)], [true, true, false]);
  assert.equal(wereParted([a, b, joined], a.id, b.id), false);
});

test('three are one person, and taking one join back leaves the other two together', () => {
  const [first, second] = [join(a, b), join(b, c)];
  assert.deepEqual(membersOf([a, b, c, first, second], c.id), ids(a, b, c));
  assert.deepEqual(membersOf([a, b, c, first, second, takenBack(first)], c.id), ids(b, c));
});

test('two joins that meet in the middle are one person, in whatever order they come', () => {
  const joins = [join(a, b), join(c, d), join(b, c)];
  for (const order of [[0, 1, 2], [2, 1, 0], [1, 2, 0]]) {
    assert.deepEqual(membersOf([a, b, c, d, ...order.map(place => joins[place])], d.id), ids(a, b, c, d));
  }
});

test('two devices that joined the same two the other way round agree on whom they are shown under', () => {
  const [one, other] = [join(a, b), join(b, a)];
  assert.equal(rootOf([a, b, one, other], b.id), a.id);
  assert.equal(rootOf([b, a, other, one], a.id), a.id);
  assert.equal(joinsOf([a, b, one, other], a.id).length, 2);
});
