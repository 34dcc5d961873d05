import assert from 'node:assert/strict';
import { test } from 'node:test';
import { startingTable } from '../../../static/app/planning/usual-table.js';

const table = (id, mark) => ({ id, provenance: { mark } });
const MEMORY = table('a', 'from memory, verify');
const PUBLISHED = table('b', 'published');

test('before a choice a published table comes before one from memory', () => {
  assert.equal(startingTable([MEMORY, PUBLISHED], null), PUBLISHED);
  assert.equal(startingTable([MEMORY], null), MEMORY);
});

test('the chosen table counts, published or not', () => {
  assert.equal(startingTable([MEMORY, PUBLISHED], 'a'), MEMORY);
});

test('a chosen table that the engine no longer has is passed over', () => {
  assert.equal(startingTable([MEMORY, PUBLISHED], 'gone'), PUBLISHED);
  assert.equal(startingTable([], 'gone'), undefined);
});
