import assert from 'node:assert/strict';
import { test } from 'node:test';
import { careOf, dueQuestion, followedBy, followedOf, isMeasuredAnew, measuredOn, visitsOf, watchQuestion } from '../../../static/app/planning/following.js';

const record = (/** @type {string} */ id, /** @type {string} */ kind, /** @type {any} */ body, /** @type {any} */ more = {}) =>
  /** @type {any} */ ({ id, kind, patient: 'p', supersedes: [], digest: `digest of ${id}`, body, ...more });
const operation = (/** @type {string} */ id, operated_on = '2026-11-25', /** @type {any} */ more = {}, eye = 'right') =>
  record(id, 'operation', { operated_on, signature_id: `signature of ${id}`, muscles: [{ eye, muscle: 'MR', done: {} }] }, more);
const visit = (/** @type {string} */ id, operation_id = '1', seen_on = '2026-11-26', /** @type {any} */ body = {}) => record(id, 'follow_up', { operation_id, seen_on, visit: id, ...body });
const ids = (/** @type {any[]} */ all) => all.map(({ id }) => id);

test('visits stay with an operation whose record was corrected since, in the order of their days', () => {
  const again = operation('2', '2026-11-25', { supersedes: ['1'] });
  const all = [operation('1'), visit('5', '2', '2026-12-02'), visit('6', '1', '2026-11-26'), visit('7', 'other'), again];
  assert.deepEqual(ids(visitsOf(all, again)), ['6', '5']);
  assert.equal(followedBy(all, '1')?.operation.id, '2');
});

test('visits of an operation end when either eye is operated again, for an alignment is of both', () => {
  const first = operation('1', '2026-01-01');
  const ended = (/** @type {any} */ later) => followedOf([first, later], 'p').map(({ endedOn }) => endedOn);
  assert.deepEqual(ended(operation('2', '2026-06-01')), ['2026-06-01', null]);
  assert.deepEqual(ended(operation('2', '2026-06-01', {}, 'left')), ['2026-06-01', null]);
  assert.deepEqual(ended(operation('2', '2026-06-01', { patient: 'q' })), [null]);
});

test('a return to theatre on the same day ends the visits of the first operation, a second plan of one sitting does not', () => {
  const day = '2026-01-01';
  const ended = (/** @type {any[]} */ ...all) => followedOf(all, 'p').map(({ operation: { id }, endedOn }) => [id, endedOn]);
  const began = (/** @type {any} */ { body, ...of }, /** @type {string} */ started_at) => ({ ...of, body: { ...body, started_at } });
  assert.deepEqual(ended(operation('1', day), operation('2', day)), [['1', day], ['2', null]]);
  assert.deepEqual(ended(operation('1', day), operation('2', day, {}, 'left')), [['1', null], ['2', null]]);
  const [late, early] = [began(operation('1', day), `${day}T15:00:00+01:00`), began(operation('2', day), `${day}T09:00:00+01:00`)];
  assert.deepEqual(ended(late, early), [['1', null], ['2', day]]);
  const [first, corrected] = [operation('1', day), operation('3', day, { supersedes: ['1'] })];
  corrected.body.signature_id = first.body.signature_id;
  assert.deepEqual(ended(first, operation('2', day), corrected).sort(), [['2', null], ['3', day]]);
});

test('the engine is told the day, the clinic\'s practice, the visits kept and where they end', () => {
  const own = record('9', 'practice', { visits: [{ name: 'Week 4', first_day: 25, last_day: 34 }] });
  const all = [operation('1'), visit('5')];
  assert.deepEqual(dueQuestion([...all, own], followedOf(all), '2026-11-30').practice, own.body);
  assert.deepEqual(dueQuestion(all, followedOf(all), '2026-11-30'), {
    today: '2026-11-30',
    practice: null,
    operations: [{ id: '1', operated_on: '2026-11-25', follow_ups: [all[1].body], ended_on: null }],
  });
});

test('a course is asked with the plan that was signed and the very examination of each visit', () => {
  const [plan, signature] = [record('plan', 'plan', { a: 'plan' }), record('signature of 1', 'signature', { plan_id: 'plan' })];
  const examination = record('e', 'examination', { examined_on: '2026-11-26' });
  const all = [operation('1'), visit('5', '1', '2026-11-26', { examination_id: 'e' }), plan, signature, examination];
  const care = careOf(all, followedOf(all)[0], '2026-11-30');
  assert.deepEqual([care?.plan, care?.attended[0].examination, care?.today], [{ a: 'plan' }, examination.body, '2026-11-30']);
  assert.equal(careOf([all[0]], followedOf([all[0]])[0], null), null);
});

test('what must not wait is looked for in the first days and after a visit of the last weeks', () => {
  const [plan, signature] = [record('plan', 'plan', {}), record('signature of 1', 'signature', { plan_id: 'plan' })];
  const watched = (/** @type {string} */ today, /** @type {any[]} */ ...visits) => {
    const all = [operation('1'), plan, signature, ...visits];
    return watchQuestion(all, followedOf(all), today).operations.length;
  };
  assert.deepEqual([watched('2026-12-01'), watched('2026-12-02')], [1, 0]);
  assert.deepEqual([watched('2027-01-25', visit('5')), watched('2027-01-26', visit('5'))], [1, 0]);
});

test('an examination of that day is taken unless another visit claims it', () => {
  const examination = record('e', 'examination', { examined_on: '2026-11-26' });
  const claimed = visit('5', '1', '2026-11-26', { examination_id: 'e' });
  const here = operation('1');
  assert.deepEqual(ids(measuredOn([examination], here, '2026-11-26')), ['e']);
  assert.deepEqual(ids(measuredOn([examination], here, '2026-11-27')), []);
  assert.deepEqual(ids(measuredOn([examination, claimed], here, '2026-11-26')), []);
  assert.deepEqual(ids(measuredOn([examination, claimed], here, '2026-11-26', '5')), ['e']);
});

test('a measurement that was changed after its visit is told', () => {
  const examination = record('e', 'examination', { examined_on: '2026-11-26' });
  const changed = record('f', 'examination', { examined_on: '2026-11-26' }, { supersedes: ['e'] });
  const of = visit('5', '1', '2026-11-26', { examination_id: 'e' });
  assert.deepEqual([isMeasuredAnew([examination, of], of), isMeasuredAnew([examination, changed, of], of)], [false, true]);
});

test('an examination of before surgery is never that of a visit', () => {
  const planned = record('9', 'examination', { examined_on: '2026-11-26' });
  const plan = record('plan', 'plan', { examination_id: '9' });
  assert.deepEqual(ids(measuredOn([planned, plan], operation('1'), '2026-11-26')), []);
  const onTheDay = (/** @type {string} */ id) => record(id, 'examination', { examined_on: '2026-11-25' });
  const done = operation('5');
  assert.deepEqual(ids(measuredOn([onTheDay('4'), done, onTheDay('6')], done, '2026-11-25')), ['6']);
});
