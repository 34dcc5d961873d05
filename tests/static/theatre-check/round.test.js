import assert from 'node:assert/strict';
import { test } from 'node:test';
import { missingIn, missingInGoingOn, missingInMember } from '../../../static/app/screens/theatre-check/missing.js';
import { askSecondAgain, begun, entered, goneOn, holding, named, roundOf } from '../../../static/app/screens/theatre-check/round.js';

const item = (/** @type {string} */ id) => /** @type {any} */ ({ id, body: { title: id } });

test('a check begins with nobody, nothing entered and the clinic’s items in one order', () => {
  const under = begun('sign in', [item('b'), item('a')]);

  assert.deepEqual([under.first, under.second, under.entries, under.held], [null, null, [], {}]);
  assert.deepEqual(under.local.map(({ record_id }) => record_id), ['a', 'b']);
});

test('a name is kept without the spaces around it', () => {
  const under = named(holding(begun('sign in', []), { name: '  Nia   Sorel ', role: 'nurse' }), 'first');

  assert.deepEqual([under.first, under.held], [{ name: 'Nia Sorel', role: 'nurse' }, {}]);
});

test('the second person who is the first is asked again with what was typed', () => {
  const both = named(holding(begun('sign in', []), { name: 'Nia Sorel', role: 'nurse' }), 'second');

  assert.deepEqual([askSecondAgain(both).second, askSecondAgain(both).held], [null, { name: 'Nia Sorel', role: 'nurse' }]);
});

test('what is entered goes with its step, and the next step begins empty', () => {
  const under = entered(holding(begun('sign in', []), { check_word: ' BADO  LIRE ' }), { id: 'paper' });

  assert.deepEqual([under.entries, under.held], [[{ step: 'paper', check_word: 'BADO LIRE' }], {}]);
});

test('the surgeon goes on after the last answer alone', () => {
  const stopped = { ...begun('time out', []), entries: [{ step: 'team', answer: 'everybody' }, { step: 'antibiotic', answer: 'not_given' }] };
  const under = goneOn(holding(stopped, { surgeon: 'Tomas Quill', reason: ' allergic ' }));

  assert.deepEqual(under.entries[0], { step: 'team', answer: 'everybody' });
  assert.deepEqual(under.entries[1], { step: 'antibiotic', answer: 'not_given', going_on: { surgeon: 'Tomas Quill', reason: 'allergic' } });
});

test('the desk is asked with the bodies of the card and without what is being entered', () => {
  const pieces = /** @type {any} */ ({ patient: { body: 'p' }, plan: { body: 'q' }, signature: { body: 's' } });
  const round = roundOf(holding(begun('sign in', []), { check_word: 'BA' }), pieces, 'current', /** @type {any} */ ([{ id: 'r', body: 'n' }]));

  assert.deepEqual(Object.keys(round).sort(), ['also', 'card', 'entries', 'first', 'local', 'patient', 'phase', 'plan', 'second', 'signature']);
  assert.deepEqual([round.patient, round.plan, round.signature], ['p', 'q', 's']);
  assert.deepEqual(round.also, [{ record_id: 'r', patient: 'n' }]);
});

test('a step is not handed on before all of it is there', () => {
  const answers = [
    { value: 'no', effect: 'on' },
    { value: 'yes', effect: 'tell' },
  ];
  const complete = /** @type {[any, any][]} */ ([
    [{ way: 'wristband' }, { hospital_number: '107', born_on: '2025-05-02' }],
    [{ way: 'wristband number' }, { hospital_number: '107' }],
    [{ way: 'paper' }, { check_word: 'BADO LIRE' }],
    [{ way: 'consent' }, { consented: [{}] }],
    [{ way: 'mark' }, { marked: 'none' }],
    [{ way: 'answer', answers }, { answer: 'no' }],
    [{ way: 'allergy', answers }, { answer: 'yes', words: 'iodine' }],
  ]);
  for (const [step, held] of complete) {
    assert.equal(missingIn(step, held), undefined, step.way);
    for (const name of Object.keys(held)) assert.ok(missingIn(step, { ...held, [name]: undefined }), `${step.way} without ${name}`);
  }
  assert.ok(missingIn({ way: 'wristband' }, { hospital_number: '107', born_on: '2025-02-30' }), 'there is no such day');
  assert.ok(missingInMember({ name: 'Nia Sorel' }) && missingInMember({ role: 'nurse' }));
  assert.ok(missingInGoingOn({ surgeon: 'Tomas Quill' }) && missingInGoingOn({ reason: 'allergic' }));
});
