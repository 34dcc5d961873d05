import assert from 'node:assert/strict';
import { test } from 'node:test';
import { bodyOf, draftFrom, lacking } from '../../../static/app/screens/measure/examination.js';
import { heldSo, moved, newSitting, noted, offered, opened, padTouched, restored, sittingOf, techniqueInView, turned } from '../../../static/app/screens/measure/sitting.js';

const eso = { type: 'direction', axis: 'horizontal', sign: 'plus' };
const step = (pd) => ({ type: 'step', pd });
const start = newSitting('2026-11-25');
const place = ({ gaze, range }) => `${gaze} ${range}`;

/** Opens the place that offers itself and takes eso so much there. */
const measured = (sitting, pd) => [eso, step(pd)].reduce(padTouched, moved(sitting, offered(sitting)));

test('the usual order offers itself: distance and near straight ahead, then up and down at distance', () => {
  const places = [];
  let sitting = start;
  while (offered(sitting)) {
    places.push(place(offered(sitting)));
    sitting = measured(sitting, 40);
  }
  assert.deepEqual(places, ['primary distance', 'primary near', 'up distance', 'down distance']);
});

test('a place that was skipped is offered again, and a place beyond the usual ones leads back to them', () => {
  const first = measured(start, 40);
  const skipped = opened(first, { gaze: 'up', range: 'distance', correction: 'with' });
  assert.equal(place(offered(padTouched(padTouched(skipped, eso), step(30)))), 'down distance');
  assert.equal(place(offered(opened(first, { gaze: 'left', range: 'distance', correction: 'with' }))), 'primary near');
});

test('a full horizontal examination takes 16 touches, saving included', () => {
  let touches = 0;
  let sitting = start;
  const touch = (next) => {
    touches += 1;
    sitting = next;
  };
  touch(moved(sitting, offered(sitting)));
  for (const [index, figure] of [[40], ['5', '2'], [30], [45]].entries()) {
    if (index > 0) touch(moved(sitting, offered(sitting)));
    touch(padTouched(sitting, eso));
    if (figure.length === 1) touch(padTouched(sitting, step(figure[0])));
    else {
      touches += 1; // to the exact figures
      for (const key of figure) touch(padTouched(sitting, { type: 'key', key }));
    }
  }
  touch(moved(sitting, offered(sitting)));
  touches += 1; // save

  assert.equal(touches, 16);
  assert.deepEqual(bodyOf(sitting.draft).readings.map(({ horizontal_pd }) => horizontal_pd), [40, 30, 45, 52]);
});

test('a direction without a figure keeps the place open and says why', () => {
  const pointed = padTouched(moved(start, offered(start)), eso);
  const stuck = moved(pointed, null);
  assert.equal(stuck.open.entry.refusal.code, 'needs_figure');
});

test('clearing a reading takes it out of the examination', () => {
  const cleared = padTouched(measured(start, 40), { type: 'clear', axis: 'horizontal' });
  assert.deepEqual(cleared.draft.readings, []);
});

test('turning to near moves an open pad to the same gaze at near, and the readings stay', () => {
  const near = turned(measured(start, 40), { range: 'near' });
  assert.deepEqual([near.open.cell.gaze, near.open.cell.range], ['primary', 'near']);
  assert.equal(near.draft.readings.length, 1);
});

test('with and without correction are two readings of one place', () => {
  const both = padTouched(padTouched(turned(measured(start, 40), { correction: 'without' }), eso), step(45));
  assert.deepEqual(both.draft.readings.map(({ correction, horizontal_pd }) => [correction, horizontal_pd]), [['with', 40], ['without', 45]]);
});

test('the order of touching leaves no trace in the body', () => {
  const there = ['primary', 'up', 'down'].map((gaze) => ({ gaze, range: 'distance', correction: 'with' }));
  const taken = (cells) => cells.reduce((sitting, cell) => padTouched(padTouched(opened(sitting, cell), eso), step(40)), start);
  assert.deepEqual(bodyOf(taken(there).draft), bodyOf(taken(there.toReversed()).draft));
});

test('nothing can be saved before the primary position at distance is read', () => {
  assert.deepEqual(lacking(start.draft).map(({ code }) => code), ['needs_primary_distance']);
  assert.deepEqual(lacking(measured(start, 40).draft), []);
});

test('an earlier operation counts when eye, muscle and what was done are said; unknown is an answer', () => {
  const ready = measured(start, 40);
  const half = noted(ready, { previous_operations: [{ eye: 'right', muscle: 'MR', operation: null, mm: null, year: null }] });
  assert.deepEqual(lacking(half.draft).map(({ field }) => field), ['previous_operations.0']);
  const whole = noted(ready, { previous_operations: [{ eye: 'right', muscle: 'MR', operation: 'unknown', mm: null, year: 2019 }] });
  assert.deepEqual(lacking(whole.draft), []);
  assert.deepEqual(bodyOf(whole.draft).previous_operations, [{ eye: 'right', muscle: 'MR', operation: 'unknown', year: 2019 }]);
});

test('what was not said is left out of the body', () => {
  const body = bodyOf(noted(measured(start, 40), { acuity_left: '6/24', note: '  squints in sun ' }).draft);
  assert.deepEqual(body, {
    schema: 1,
    examined_on: '2026-11-25',
    readings: [{ gaze: 'primary', range: 'distance', correction: 'with', horizontal_pd: 40 }],
    acuity_left: '6/24',
    versions: [],
    previous_operations: [],
    note: 'squints in sun',
  });
});

test('a saved examination opened to correct makes the same body when nothing is changed', () => {
  const body = bodyOf(noted(measured(start, 40), { versions: [{ eye: 'left', muscle: 'IO', grade: 2 }], fixing_eye: 'right' }).draft);
  assert.deepEqual(bodyOf(sittingOf(draftFrom(body)).draft), body);
});

test('what an examination holds beyond this screen survives a correction here', () => {
  const body = {
    ...bodyOf(measured(start, 40).draft),
    spectacles_right_d: -10,
    head_posture: { turn: 'left', turn_deg: 15 },
    readings: [
      { gaze: 'primary', range: 'distance', correction: 'with', horizontal_pd: 40, technique: { material: 'glass' } },
      { gaze: 'primary', range: 'distance', correction: 'with', horizontal_pd: 46, condition: 'after patching' },
    ],
  };
  const corrected = [eso, step(45)].reduce(padTouched, opened(sittingOf(draftFrom(body)), { gaze: 'primary', range: 'distance', correction: 'with' }));
  const { readings, ...rest } = bodyOf(corrected.draft);
  const { readings: before, ...others } = body;
  assert.deepEqual(rest, others);
  assert.deepEqual(readings, [{ ...before[0], horizontal_pd: 45 }, before[1]]);
});

const main = { gaze: 'primary', range: 'distance', correction: 'with' };
const shown = ({ draft }) => draft.readings.map(({ condition = 'plain', method = 'prism cover', repeat = 1, horizontal_pd }) => [condition, method, repeat, horizontal_pd]);

test('a special condition is a place of its own, and each offers what is usually measured under it', () => {
  const patched = turned(moved(measured(start, 40), null), { condition: 'after patching' });
  assert.equal(place(offered(patched)), 'primary distance');
  assert.equal(place(offered(turned(moved(patched, null), { condition: 'through +3.00' }))), 'primary near');
  assert.deepEqual(shown(measured(patched, 52)), [['plain', 'prism cover', 1, 40], ['after patching', 'prism cover', 1, 52]]);
});

test('another method makes another reading of the same place and leaves the first as it was', () => {
  const both = padTouched(padTouched(turned(measured(start, 40), { method: 'light reflex' }), eso), step(30));
  assert.deepEqual(shown(both), [['plain', 'prism cover', 1, 40], ['plain', 'light reflex', 1, 30]]);
});

test('a place opens at what was read there, whatever the present method is', () => {
  const reflex = padTouched(padTouched(opened(turned(start, { method: 'prism reflex' }), main), eso), step(35));
  const again = opened(turned(moved(reflex, null), { method: 'prism cover' }), main);
  assert.equal(again.open.cell.method, 'prism reflex');
  assert.equal(again.open.entry.horizontal.typed.text, '35');
});

test('a reading taken again stands beside the first', () => {
  const twice = padTouched(padTouched(opened(measured(start, 40), { ...main, method: 'prism cover', repeat: 2 }), eso), step(45));
  assert.deepEqual(shown(twice), [['plain', 'prism cover', 1, 40], ['plain', 'prism cover', 2, 45]]);
});

test('prisms held another way go on from the open reading to those after it, a second prism does not', () => {
  const glass = { material: 'glass', held: 'prentice', arrangement: 'split', horizontal_second_pd: 20 };
  const split = heldSo(measured(start, 45), glass);
  assert.deepEqual(split.draft.readings[0].technique, glass);
  const next = measured(split, 35);
  assert.deepEqual(techniqueInView(next), { material: 'glass', held: 'prentice', arrangement: 'one' });
  assert.deepEqual(bodyOf(next.draft).readings[1].technique, { material: 'glass', held: 'prentice', arrangement: 'one' });
});

test('two prisms without the label of the second are not saved', () => {
  const split = heldSo(measured(start, 45), { material: 'acrylic', held: 'frontal', arrangement: 'split' });
  assert.deepEqual(lacking(split.draft).map(({ code }) => code), ['second_prism_missing']);
});

test('a reading after patching alone does not stand for the plain one', () => {
  const patched = measured(turned(start, { condition: 'after patching' }), 40);
  assert.deepEqual(lacking(patched.draft).map(({ code }) => code), ['needs_primary_distance']);
});

test('a draft kept by an older release opens with everything else as usual', () => {
  const { taking: _, ...kept } = measured(start, 40);
  const { ductions: __, head_posture: ___, ...draft } = kept.draft;
  assert.deepEqual(restored({ ...kept, draft }), measured(start, 40));
});
