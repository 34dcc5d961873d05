import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { ANAESTHESIA, COMPLICATIONS, GAUGES, NEEDLES, STATES_FOUND, SUTURES, workShort } from '../../../static/app/words/operation.js';

const source = (/** @type {string} */ name) => readFileSync(new URL(`../../../planner/records/${name}.py`, import.meta.url), 'utf8');

/** @param {string} text @param {string} name @returns {string[]} the words of an enumeration */
function wordsOf(text, name) {
  const body = text.slice(text.indexOf(`class ${name}(StrEnum)`)).split(/\n(?:class |@dataclass|    @property|[A-Z_]+ = )/)[0];
  return [...body.matchAll(/^ {4}[A-Z_]+ = "([^"]+)"/gm)].map(([, word]) => word);
}

test('the screen offers the words of the record, all of them and no other', () => {
  const [materials, operation] = [source('materials'), source('operation')];
  assert.deepEqual(SUTURES, wordsOf(materials, 'Suture'));
  assert.deepEqual(GAUGES, wordsOf(materials, 'Gauge'));
  assert.deepEqual(NEEDLES, wordsOf(materials, 'Needle'));
  assert.deepEqual(ANAESTHESIA, wordsOf(operation, 'Anaesthesia'));
  assert.deepEqual(COMPLICATIONS, wordsOf(operation, 'Complication'));
  assert.deepEqual(STATES_FOUND, wordsOf(operation, 'MuscleState'));
});

test('what was done is short and has its unit', () => {
  assert.equal(workShort({ operation: 'recess', mm: 5.5, offset: 'up' }), 'recess 5.5\u202fmm, tendon moved up');
  assert.equal(workShort({ operation: 'weaken', mm: null, offset: null }), 'weaken');
  assert.equal(workShort(null), 'not operated');
});
