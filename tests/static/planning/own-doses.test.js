import assert from 'node:assert/strict';
import { test } from 'node:test';
import { isTaken, ownNote, saysMore, suggestionFor, taken } from '../../../static/app/planning/own-doses.js';

const dose = (/** @type {'right' | 'left'} */ eye, /** @type {number} */ own_mm, proposed_mm = 5.5) => ({ eye, muscle: /** @type {const} */ ('MR'), operation: 'recess', proposed_mm, own_mm });
const BOTH = { option: 'recess-both-mr', doses: [dose('right', 6), dose('left', 6)] };
const ELSEWHERE = { option: 'recess-mr-right', eye: 'right', muscle: 'MR', mm: 4 };

test('taking sets each muscle that differs, replaces what was set there, and leaves other options alone', () => {
  const before = [{ option: 'recess-both-mr', eye: 'left', muscle: 'MR', mm: 3 }, ELSEWHERE];
  const changes = taken(before, { ...BOTH, doses: [dose('right', 6), dose('left', 5.5)] });

  assert.deepEqual(changes.filter(({ option }) => option === BOTH.option), [{ option: 'recess-both-mr', eye: 'right', muscle: 'MR', mm: 6 }]);
  assert.ok(changes.includes(ELSEWHERE));
});

test('it counts as taken while the figures are exactly those, and no longer when one is changed', () => {
  const changes = taken([ELSEWHERE], BOTH);

  assert.equal(isTaken(changes, BOTH), true);
  assert.equal(isTaken(changes.filter(({ eye }) => eye === 'right'), BOTH), false);
  assert.equal(isTaken(changes.map((each) => ({ ...each, mm: 6.5 })), BOTH), false);
  assert.equal(isTaken([], BOTH), false);
});

test('of several operations at one sitting the horizontal part is spoken of, and its figures are set for that part', () => {
  const combined = 'recess-both-mr+weaken-io-left';

  assert.equal(suggestionFor([{ option: 'recess-mr-right' }, BOTH], combined), BOTH);
  assert.equal(suggestionFor([BOTH], 'recess-both-mr'), BOTH);
  assert.equal(suggestionFor([BOTH], 'recess-both-mr-and-more+weaken-io-left'), undefined);
  assert.deepEqual(new Set(taken([], BOTH).map(({ option }) => option)), new Set(['recess-both-mr']));
});

test('where both say the same there is nothing to take', () => {
  const same = { ...BOTH, doses: [dose('right', 5.5), dose('left', 5.5)] };

  assert.deepEqual([saysMore(same), saysMore(BOTH), isTaken([], same)], [false, true, false]);
});

test('the plan’s note names cases, effect, interval, both figures and the table', () => {
  const note = ownNote({ ...BOTH, doses: [dose('right', 6), dose('left', 5.5)] }, { cases: 57, effect: { middle: 0.881, low: 0.841, high: 0.921 } }, 'Wright');

  assert.match(note, /57 cases at 88 % of the table \(95 % interval 84 to 92 %\): RIGHT eye, medial rectus 6\.0.mm, table 5\.5.mm\. Wright\.$/);
  assert.doesNotMatch(note, /LEFT/);
});
