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
