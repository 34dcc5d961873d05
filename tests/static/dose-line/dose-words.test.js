import assert from 'node:assert/strict';
import { test } from 'node:test';
import { limbusWords, tableWords } from '../../../static/app/parts/dose-line/dose-words.js';

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
