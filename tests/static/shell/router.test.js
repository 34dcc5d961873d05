import assert from 'node:assert/strict';
import { test } from 'node:test';
import { above, match } from '../../../static/app/shell/router.js';

test('a pattern gives its named parts, decoded', () => {
  assert.deepEqual(match('/patients/:patient/options/:examination/:option', '/patients/p/options/e/one%20eye'), {
    patient: 'p', examination: 'e', option: 'one eye',
  });
  assert.deepEqual(match('/status', '/status'), {});
});

test('another length, another word or an empty part is no match', () => {
  for (const path of ['/patients', '/patients/p/edit', '/patients/', '/others/p']) assert.equal(match('/patients/:patient', path), null);
});

test('an address that a person mistyped is an answer, not an error', () => {
  assert.deepEqual(match('/patients/:patient', '/patients/%E0%A4%A'), { patient: '%E0%A4%A' });
});

test('the screen above is the patient, then the list', () => {
  for (const [path, expected] of [
    ['/patients/p/options/e/both', '/patients/p/options/e'],
    ['/patients/p/options/e', '/patients/p'],
    ['/patients/p/edit', '/patients/p'],
    ['/patients/p', '/patients'],
    ['/settings', '/patients'],
  ]) {
    assert.equal(above(path), expected);
  }
});
