import assert from 'node:assert/strict';
import { test } from 'node:test';
import { besideLimbus } from '../../../static/app/screens/card/beside-limbus.js';

const plain = (text) => text.replaceAll('\u202f', ' ');

test('what a caliper spans says itself that it is from the limbus, and stands before the insertion', () => {
  assert.equal(plain(besideLimbus({ caliper_mm: 10.64, insertion_mm: 5.5 })), 'straight caliper from the limbus 10.64 mm; insertion at 5.5 mm');
});

test('either stands alone, and neither leaves nothing to be put in brackets', () => {
  assert.equal(plain(besideLimbus({ caliper_mm: 10.64, insertion_mm: null })), 'straight caliper from the limbus 10.64 mm');
  assert.equal(plain(besideLimbus({ insertion_mm: 5.5 })), 'insertion at 5.5 mm');
  assert.equal(besideLimbus({ caliper_mm: null, insertion_mm: null }), '');
});
