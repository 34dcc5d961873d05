import assert from 'node:assert/strict';
import { test } from 'node:test';
import { toldOtherwise } from '../../../static/app/planning/told-otherwise.js';

const facts = (own, other) => toldOtherwise(own, other).map(({ field, own: here, other: there }) => [field, here, there]);

test('entries that say the same, or equally little, do not differ', () => {
  assert.deepEqual(facts({ allergies: 'penicillin', latex: 'yes' }, { allergies: ' penicillin ', latex: 'yes' }), []);
  assert.deepEqual(facts({}, { allergies: '', latex: 'unknown', malignant_hyperthermia_family: 'unknown' }), []);
});

test('what the other entry warns of is told beside what this one says', () => {
  assert.deepEqual(facts({ latex: 'no' }, { allergies: 'penicillin', latex: 'yes', anticoagulants: 'warfarin', malignant_hyperthermia_family: 'yes' }), [
    ['allergies', 'none entered', 'penicillin'],
    ['latex', 'no', 'yes'],
    ['anticoagulants', 'none entered', 'warfarin'],
    ['malignant_hyperthermia_family', 'not asked', 'yes'],
  ]);
});

test('where only this entry warns there is a difference too', () => {
  assert.deepEqual(facts({ allergies: 'penicillin', latex: 'yes' }, { latex: 'no' }), [
    ['allergies', 'penicillin', 'none entered'],
    ['latex', 'yes', 'no'],
  ]);
});
