import assert from 'node:assert/strict';
import { test } from 'node:test';
import { familiesOf } from '../../../static/app/planning/own-families.js';

const OWN = { operation: { id: 'O' }, plan: { body: { option: { title: 'Recess both medial recti', table: null }, table: { id: 'classic-parks', name: 'Parks' } } } };
const OUTCOME = { id: 'O', family: 'recess-both-mr', result: {}, past_case: { id: 'O' } };
const carried = (id, family, past_case = { id }) => ({ id, family, result: { table: 'classic-parks' }, past_case });

test('cases of a notebook stand with the operations of their family and table, and make a family of their own where there is none', () => {
  const [both, pair] = familiesOf([OWN], [OUTCOME], [carried('a', 'recess-both-mr'), carried('b', 'recess-both-mr', null), carried('c', 'recess-mr-resect-lr')]);

  assert.deepEqual([both.operations, both.cases.map(({ id }) => id), both.title], [3, ['O', 'a'], 'Recess both medial recti']);
  assert.deepEqual([...both.done.keys()], ['O']);
  assert.deepEqual([pair.title, pair.table, pair.operations], ['Recess MR resect LR', 'classic-parks', 1]);
});

test('without a notebook nothing is added', () => {
  assert.deepEqual(familiesOf([OWN], [OUTCOME]), familiesOf([OWN], [OUTCOME], []));
});

test('what no option of a case can show has no switch: several operations at one sitting, and another deviation than the horizontal', () => {
  const of = (/** @type {string} */ family, answers = 'horizontal') => {
    const plan = { body: { option: { ...OWN.plan.body.option, answers }, table: OWN.plan.body.table } };
    return familiesOf([{ ...OWN, plan }], [{ ...OUTCOME, family }])[0].isSuggested;
  };

  assert.deepEqual([of('recess-both-mr'), of('recess-both-mr+weaken-io'), of('recess-ir', 'vertical')], [true, false, false]);
  assert.equal(familiesOf([], [], [carried('a', 'recess-both-mr')])[0].isSuggested, true);
});
