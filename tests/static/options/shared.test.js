import assert from 'node:assert/strict';
import { test } from 'node:test';
import { shared } from '../../../static/app/screens/options/shared.js';

const said = (text, more = {}) => ({ code: 'c', text, provenance: {}, ...more });
const option = (reasons_for, reasons_against = [], notices = []) => ({ reasons_for, reasons_against, notices });

test('what every option says is said once', () => {
  const common = shared([option([said('same'), said('mine')]), option([said('yours'), said('same')])]);
  assert.deepEqual(common.reasons.map(({ text }) => text), ['same']);
  assert.ok(common.has(said('same')));
  assert.ok(!common.has(said('mine')));
});

test('the same words at another level are another thing', () => {
  const common = shared([option([], [], [said('x', { level: 'note' })]), option([], [], [said('x', { level: 'caution' })])]);
  assert.deepEqual(common.notices, []);
});

test('a single option shares nothing: all is its own', () => {
  assert.ok(!shared([option([said('x')])]).has(said('x')));
});
