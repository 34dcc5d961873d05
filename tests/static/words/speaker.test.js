/** An English text in another language: its values, its plural forms, and what is said where there is no translation. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { speakerOf } from '../../../static/app/words/speaker.js';

/** nplurals=6 as Arabic has them, by hand for the first hundred and the second. */
const form = (n) => (n === 0 ? 0 : n === 1 ? 1 : n === 2 ? 2 : n % 100 >= 3 && n % 100 <= 10 ? 3 : n % 100 >= 11 ? 4 : 5);
const ARABIC = {
  language: 'ar',
  direction: 'rtl',
  reviewed: null,
  plural: Array.from({ length: 200 }, (_, n) => form(n)).join(''),
  texts: { 'RIGHT eye': 'العين اليمنى', 'by {mm}': 'بمقدار {mm}', '{count} day': ['none', 'one', 'two', 'few {count}', 'many {count}', 'other {count}'] },
};

test('English needs no catalogue', () => {
  const { say, sayCount, language, direction } = speakerOf(null);
  assert.deepEqual([language, direction], ['en', 'ltr']);
  assert.equal(say('by {mm}', { mm: '5.5 mm' }), 'by 5.5 mm');
  assert.equal(sayCount('{count} day', '{count} days', 1), '1 day');
  assert.equal(sayCount('{count} day', '{count} days', 0), '0 days');
});

test('values are set apart where the language runs from right to left', () => {
  assert.equal(speakerOf(ARABIC).say('by {mm}', { mm: '5.5 mm' }), 'بمقدار \u20685.5 mm\u2069');
  assert.equal(speakerOf({ ...ARABIC, direction: 'ltr' }).say('by {mm}', { mm: '5.5 mm' }), 'بمقدار 5.5 mm');
});

test('every number takes the form that gettext gives it', () => {
  const { sayCount } = speakerOf(ARABIC);
  const forms = ['none', 'one', 'two', 'few', 'many', 'other'];
  for (const n of [0, 1, 2, 3, 10, 11, 99, 100, 101, 102, 103, 111, 199, 200, 203, 1002, 12_345]) {
    assert.equal(sayCount('{count} day', '{count} days', n).split(' ')[0], forms[form(n)], String(n));
  }
});

test('what has no translation is said in English, names of the language’s own objects too', () => {
  const { say, said } = speakerOf(ARABIC);
  assert.equal(say('Nobody translated this'), 'Nobody translated this');
  assert.equal(say('constructor'), 'constructor');
  assert.equal(said({ text: 'RIGHT eye', values: {} }), 'العين اليمنى');
});

test('a placeholder without its value stays to be seen', () => {
  assert.equal(speakerOf(null).say('by {mm}', {}), 'by {mm}');
});
