import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { mayTakeBack, mayWrite, WRITERS } from '../../../static/app/planning/rights.js';

test('the phone lets each role write exactly what the clinic accepts of it', () => {
  for (const [kind, roles] of Object.entries(WRITERS)) {
    const source = readFileSync(new URL(`../../../clinic/sync/kinds/${kind}.py`, import.meta.url), 'utf8');
    const [, listed] = /writers=frozenset\(\{([^}]*)\}\)/.exec(source);
    assert.deepEqual([...roles].sort(), [...listed.matchAll(/Role\.([A-Z]+)/g)].map(([, name]) => name.toLowerCase()).sort(), kind);
  }
});

test('who has no role here writes nothing', () => {
  assert.equal(mayWrite(undefined, 'examination'), false);
});

test('a signature is taken back by those who may sign, an examination by those who may measure', () => {
  assert.deepEqual(['surgeon', 'clinic', 'coordinator', 'theatre'].map((role) => mayTakeBack(role, 'signature')), [true, false, false, false]);
  assert.deepEqual(['surgeon', 'clinic', 'coordinator', 'theatre'].map((role) => mayTakeBack(role, 'examination')), [true, true, false, false]);
});
