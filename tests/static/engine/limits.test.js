import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { test } from 'node:test';
import { callLimit_ms } from '../../../static/app/engine/limits.js';

const ASKS = readdirSync(new URL('../../../planner/desk/asks', import.meta.url)).map((name) => name.replace(/\.py$/, ''));

test('what counts every operation may take longer than what answers one case', () => {
  const counting = ['audit', 'audit_export', 'calibrate', 'outcomes', 'results', 'suggest'];

  for (const name of counting) {
    assert.ok(ASKS.includes(name), name);
    assert.ok(callLimit_ms(name) > callLimit_ms('propose'), name);
  }
});

test('a page may take as long as its drawing library needs to come', () => {
  assert.equal(callLimit_ms('audit_pdf'), callLimit_ms('card_pdf'));
  assert.ok(callLimit_ms('card_pdf') > callLimit_ms('card'));
});
