import assert from 'node:assert/strict';
import { test } from 'node:test';
import { likenesses } from '../../../static/app/screens/patient-edit/likeness.js';

const known = (id, full_name, born_on, hospital_number) => ({ id, body: { full_name, born_on, hospital_number } });
const ANA = known('1', 'Ana Vrell', '2019-03-04', 'HR-2041');
const BO = known('2', 'Bo Adeyemi', '2011-01-01', 'HR-2042');
const found = (typed) => likenesses({ full_name: '', born_on: '', hospital_number: '', ...typed }, [ANA, BO]).map(({ id, because }) => [id, because]);

test('the same number is found whatever its marks and case', () => {
  assert.deepEqual(found({ hospital_number: 'hr 2041' }), [['1', 'number']]);
});

test('the same name with the same birth date is found, accents and case aside', () => {
  assert.deepEqual(found({ full_name: 'ANA VRÉLL', born_on: '2019-03-04' }), [['1', 'name and birth date']]);
  assert.deepEqual(found({ full_name: 'Ana Vrell', born_on: '2019-03-05' }), []);
});

test('an empty form is like nobody', () => {
  assert.deepEqual(found({}), []);
  assert.deepEqual(found({ hospital_number: '-' }), []);
});

test('who has the same number is named once', () => {
  assert.deepEqual(found({ ...ANA.body }), [['1', 'number']]);
});
