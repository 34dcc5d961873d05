import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { BREAKERS, DIAGNOSES } from '../../../static/app/screens/measure/rest/known.js';
import { ARRANGEMENT_WORDS, CONDITION_WORDS, HELD_WORDS, MATERIAL_WORDS, METHOD_WORDS } from '../../../static/app/words/taking.js';

const source = (name) => readFileSync(new URL(`../../../planner/records/${name}.py`, import.meta.url), 'utf8');

/** The values of a StrEnum of the engine, read from its own text. */
function valuesOf(file, name) {
  const body = new RegExp(`class ${name}\\(StrEnum\\).*?(?=\\nclass |\\n@dataclass|\\n[A-Z_]+ = |$)`, 's').exec(source(file))[0];
  return [...body.matchAll(/^    [A-Z_0-9]+ = "([^"]+)"/gm)].map(([, value]) => value);
}

test('every diagnosis and every breaker of the three-step test that the engine knows can be told', () => {
  assert.deepEqual([...DIAGNOSES].sort(), valuesOf('diagnosis', 'Diagnosis').sort());
  assert.deepEqual(BREAKERS, valuesOf('diagnosis', 'Breaker'));
});

test('every way to take a reading has its words, in the engine’s order', () => {
  assert.deepEqual(Object.keys(METHOD_WORDS), valuesOf('technique', 'Method'));
  assert.deepEqual(Object.keys(CONDITION_WORDS), valuesOf('technique', 'Condition'));
  assert.deepEqual(Object.keys(MATERIAL_WORDS).sort(), valuesOf('technique', 'Material').sort());
  assert.deepEqual(Object.keys(HELD_WORDS), valuesOf('technique', 'Held'));
  assert.deepEqual(Object.keys(ARRANGEMENT_WORDS), valuesOf('technique', 'Arrangement'));
});
