import assert from 'node:assert/strict';
import { test } from 'node:test';
import { adjustedWords, limbusWords, offsetWords, roomWords, tableWords } from '../../../static/app/parts/dose-line/dose-words.js';

const plain = (text) => text.replaceAll('\u202f', ' ');

test('an adjustment of the table is told beside the table’s own figure', () => {
  assert.equal(plain(tableWords({ table_mm: 6 })), 'table 6.0 mm');
  assert.equal(plain(tableWords({ table_mm: 6, adjustment_mm: -0.5 })), 'table 6.0 mm, less 0.5 mm');
  assert.equal(plain(tableWords({ table_mm: 6, adjustment_mm: 1 })), 'table 6.0 mm, plus 1.0 mm');
});

test('the caliper figure stands beside the arc where the engine gives one', () => {
  assert.equal(plain(limbusWords({ limbus_mm: 11, caliper_mm: null })), '11.0 mm from the limbus');
  assert.equal(plain(limbusWords({ limbus_mm: 11, caliper_mm: 10.6 })), '11.0 mm from the limbus (caliper 10.6 mm)');
});

test('an operation without a figure is told in the engine’s words', () => {
  assert.equal(limbusWords({ limbus_mm: null, attachment_words: 'beside the lateral end of the inferior rectus' }), 'beside the lateral end of the inferior rectus');
  assert.equal(tableWords({ table_mm: null }), '');
});

test('a moved tendon is told with its direction, its width and its millimetres', () => {
  assert.equal(plain(offsetWords({ offset: { direction: 'down', width: 'half tendon', mm: 5 } })), 'tendon moved down by half a tendon width (5.0 mm)');
  assert.equal(plain(offsetWords({ offset: { direction: 'up', width: 'full tendon', mm: 10 } })), 'tendon moved up by a full tendon width (10.0 mm)');
  assert.equal(offsetWords({}), '');
});

test('an adjusted dose is told from the table’s figure to the result, unless the surgeon’s own stands', () => {
  const dose = { mm: 7, table_mm: 6, adjustment_mm: 1 };
  assert.equal(plain(adjustedWords(dose)), 'table 6.0 mm, plus 1.0 mm: 7.0 mm');
  assert.equal(adjustedWords({ ...dose, changed: true }), '');
  assert.equal(adjustedWords({ ...dose, adjustment_mm: 0 }), '');
});

test('what a muscle still allows is told where it is known', () => {
  assert.equal(plain(roomWords({ adjustable: true, room_mm: 2 })), 'adjustable suture possible, 2.0 mm left for later');
  assert.equal(roomWords({ room_mm: null }), '');
});
