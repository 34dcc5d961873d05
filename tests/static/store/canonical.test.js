import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { canonical, digest } from '../../../static/app/store/canonical.js';

const vectors = JSON.parse(readFileSync(new URL('../../../fixtures/canonical.json', import.meta.url), 'utf8'));

for (const { ieee754, text } of [...vectors.numbers.rfc8785_appendix_b, ...vectors.numbers.own]) {
  test(`the number ${text} (${ieee754}) has the text of the RFC`, () => {
    assert.equal(canonical(Buffer.from(ieee754, 'hex').readDoubleBE()), text);
  });
}

for (const { name, json, text, sha256 } of vectors.values) {
  test(`${name} has the text and digest of the vector`, async () => {
    assert.equal(canonical(JSON.parse(json)), text);
    assert.equal(await digest(JSON.parse(json)), sha256);
  });
}

for (const { name, json } of vectors.refused) {
  test(`${name} is refused`, () => assert.throws(() => canonical(JSON.parse(json)), TypeError));
}

for (const value of [NaN, Infinity, undefined, () => 1, { a: undefined }]) {
  test(`${typeof value} ${String(value)} is refused`, () => assert.throws(() => canonical(value), TypeError));
}
