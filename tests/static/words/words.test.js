import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { MUSCLES, OPERATIONS, operationsOn, workWords } from '../../../static/app/words/anatomy.js';
import { gradeWords, mmWords, prismWords } from '../../../static/app/words/figures.js';
import { deviationWords, readingLines } from '../../../static/app/words/reading.js';

const plain = (text) => text.replace('\u202f', ' ');

test('a direction is a word, never a sign', () => {
  assert.equal(plain(deviationWords('horizontal', 40)), 'eso 40 Δ');
  assert.equal(plain(deviationWords('horizontal', -12.5)), 'exo 12.5 Δ');
  assert.equal(plain(deviationWords('vertical', -4)), 'left hyper 4 Δ');
  assert.equal(deviationWords('horizontal', 0), 'none');
});

test('a side is written out', () => {
  assert.equal(workWords({ eye: 'right', muscle: 'MR', operation: 'recess' }), 'RIGHT eye, medial rectus: recess');
});

test('millimetres carry one decimal, prism dioptres only where they have one', () => {
  assert.equal(plain(mmWords(5)), '5.0 mm');
  assert.equal(plain(mmWords(5.5)), '5.5 mm');
  assert.equal(plain(prismWords(40)), '40 Δ');
});

test('grades carry their sign', () => {
  assert.deepEqual([-2, 0, 3].map(gradeWords), ['\u22122', '0', '+3']);
});

test('a zero is said, an absent figure is not', () => {
  assert.deepEqual(readingLines({ horizontal_pd: 0, vertical_pd: 0 }).map(({ text }) => text), ['no horizontal', 'no vertical']);
  assert.deepEqual(readingLines({}), []);
});

test('every operation of the engine has its word, and may be said of a muscle it is done to', () => {
  const source = readFileSync(new URL('../../../planner/values/option.py', import.meta.url), 'utf8');
  const body = /class Operation\(.*?@property/s.exec(source)[0];
  const known = [...body.matchAll(/ = "([^"]+)"/g)].map(([, word]) => word);
  assert.deepEqual(OPERATIONS, known);
  const sayable = new Set(MUSCLES.flatMap(operationsOn));
  assert.deepEqual(known.filter((operation) => !sayable.has(operation)), []);
});

test('a tendon moved across its pull is part of what is done, as planned and as drawn', () => {
  const work = { eye: 'left', muscle: 'LR', operation: 'recess' };
  const words = 'LEFT eye, lateral rectus: recess, tendon moved up';
  assert.equal(workWords({ ...work, offset: { direction: 'up', width: 'half tendon', mm: 5 } }), words);
  assert.equal(workWords({ ...work, offset: 'up' }), words);
});
