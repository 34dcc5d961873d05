import assert from 'node:assert/strict';
import { test } from 'node:test';
import { familiesOf, isOn, switchesOf, turnedSwitch } from '../../../static/app/planning/own-families.js';
import { reportedBy } from '../../../static/app/planning/reported.js';

const ME = 'Dr Edda Roan';
const record = (/** @type {string} */ id, /** @type {string} */ kind, /** @type {any} */ body, more = {}) =>
  /** @type {any} */ ({ id, kind, patient: 'p', supersedes: [], digest: `digest of ${id}`, body, ...more });
const plan = (/** @type {string} */ id, /** @type {string} */ option, table = 'one') =>
  record(id, 'plan', { option: { id: option, title: 'Right eye: recess the lateral rectus', table: null }, table: { id: table, name: `Table ${table}` } });
const signature = (/** @type {string} */ id, /** @type {any} */ of) => record(id, 'signature', { plan_id: of.id });
const muscles = (eye = 'right') => [{ eye, muscle: 'MR', done: { operation: 'recess', mm: 5 } }];
const operation = (/** @type {string} */ id, /** @type {any} */ of, operated_on = '2026-01-10', surgeon_name = ME, eye = 'right', more = {}) =>
  record(id, 'operation', { signature_id: of.id, plan_id: of.body.plan_id, operated_on, surgeon_name, muscles: muscles(eye), window: null }, more);
const visit = (/** @type {string} */ id, /** @type {string} */ of, /** @type {string} */ seen_on, examination_id = /** @type {string | null} */ (null)) =>
  record(id, 'follow_up', { operation_id: of, seen_on, visit: 'Week 1', examination_id });

const PLAN = plan('a1', 'recess-lr-right');
const SIGNED = signature('a2', PLAN);
const DONE = operation('a3', SIGNED);
const base = [PLAN, SIGNED, DONE];

test('an operation is told with its visits, their measurements, and those of its earlier version', () => {
  const measured = record('b1', 'examination', { examined_on: '2026-02-20' });
  const corrected = operation('a4', SIGNED, '2026-01-10', ME, 'right', { supersedes: ['a3'] });
  const [{ reported }] = reportedBy([...base, corrected, measured, visit('b3', 'a4', '2026-03-01'), visit('b2', 'a3', '2026-02-20', 'b1')], ME);
  const care = /** @type {any} */ (reported.care);

  assert.equal(reported.id, 'a4');
  assert.deepEqual(care.attended.map((/** @type {any} */ { follow_up, examination }) => [follow_up.seen_on, examination?.examined_on ?? null]), [
    ['2026-02-20', '2026-02-20'],
    ['2026-03-01', null],
  ]);
});

test('only the surgeon’s own are told, and not those whose plan is elsewhere', () => {
  assert.equal(reportedBy(base, 'Dr Somebody Else').length, 0);
  assert.equal(reportedBy([SIGNED, DONE], ME).length, 0);
});

test('another operation of the same eyes is told in days, whoever did it', () => {
  const other = plan('c1', 'recess-lr-right');
  const again = operation('c3', signature('c2', other), '2026-01-28', 'Dr Somebody Else');

  assert.equal(reportedBy([...base, other, signature('c2', other), again], ME)[0].reported.reoperated_days, 18);
  assert.equal(reportedBy([...base], ME)[0].reported.reoperated_days, null);
});

test('what an outcome follows from changes with every record that it rests on', () => {
  const key = (/** @type {any[]} */ more) => reportedBy([...base, ...more], ME)[0].key;
  const measured = record('b1', 'examination', {});

  assert.equal(key([]), key([]));
  assert.equal(new Set([key([]), key([visit('b2', 'a3', '2026-02-20')]), key([measured, visit('b2', 'a3', '2026-02-20', 'b1')])]).size, 3);
});

test('families are told apart by their table, the side is left out, and an unmeasured operation counts as one', () => {
  const done = ['one', 'one', 'two'].map((table, place) => ({ key: String(place), operation: operation(`o${place}`, SIGNED), plan: plan(`p${place}`, 'recess-lr-right', table), reported: /** @type {any} */ ({}) }));
  const outcomes = [{ past_case: { id: 'o0' } }, { past_case: null }, { past_case: { id: 'o2' } }].map((each, place) => ({ id: `o${place}`, family: 'recess-lr', result: null, ...each }));
  const families = familiesOf(done, outcomes);

  assert.deepEqual(families.map(({ table, operations, cases }) => [table, operations, cases.length]), [['one', 2, 1], ['two', 1, 1]]);
  assert.equal(families[0].title, 'One eye: recess the lateral rectus');
  assert.deepEqual(familiesOf(done, [undefined, null, outcomes[2]]).length, 1);
});

test('all is off until the surgeon’s own record says otherwise, and a switch turns one alone', () => {
  const one = { family: 'recess-lr', table: 'one' };
  const other = { family: 'recess-lr', table: 'two' };
  const said = record('s1', 'own_results', { surgeon_name: ME, switched_on: [one] }, { patient: 's1' });

  assert.deepEqual(switchesOf([], ME).on, []);
  assert.deepEqual(switchesOf([said], 'Dr Somebody Else').on, []);
  assert.deepEqual([isOn(switchesOf([said], ME).on, one), isOn(switchesOf([said], ME).on, other)], [true, false]);
  assert.deepEqual(turnedSwitch(turnedSwitch([one], other), one), [other]);
});
