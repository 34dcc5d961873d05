import assert from 'node:assert/strict';
import { test } from 'node:test';
import { EYES, MUSCLES } from '../../../static/app/words/anatomy.js';
import { HEIGHT, LINE, WIDTH, along, middleOf, wordsPlaceOf, zoneOf } from '../../../static/app/parts/eyes/places.js';

const everyPlace = EYES.flatMap((eye) => MUSCLES.map((muscle) => [eye, muscle]));

test('facing the patient, the right eye is on the left, and both medial recti lie between the eyes', () => {
  assert.ok(middleOf('right').x < middleOf('left').x);
  assert.ok(along('right', 'MR', 60).x > middleOf('right').x);
  assert.ok(along('left', 'MR', 60).x < middleOf('left').x);
  assert.ok(along('right', 'SR', 60).y < middleOf('right').y);
});

test('the picture is a mirror of itself', () => {
  for (const muscle of MUSCLES) {
    const [right, left] = EYES.map((eye) => along(eye, muscle, 50));
    assert.ok(Math.abs(right.x + left.x - WIDTH) < 1e-9);
    assert.ok(Math.abs(right.y - left.y) < 1e-9);
  }
});

test('every touch zone is 48 px wide on a screen of 320 px, inside the picture, and overlaps no other', () => {
  const scale = (320 - 32) / WIDTH;
  const zones = everyPlace.map(([eye, muscle]) => zoneOf(eye, muscle));
  for (const [index, zone] of zones.entries()) {
    assert.ok(zone.width * scale >= 48 && zone.height * scale >= 48);
    assert.ok(zone.x >= 0 && zone.y >= 0 && zone.x + zone.width <= WIDTH && zone.y + zone.height <= HEIGHT);
    for (const other of zones.slice(index + 1)) {
      const apart = zone.x + zone.width <= other.x || other.x + other.width <= zone.x || zone.y + zone.height <= other.y || other.y + other.height <= zone.y;
      assert.ok(apart);
    }
  }
});

test('a band runs through its own zone', () => {
  for (const [eye, muscle] of everyPlace) {
    const zone = zoneOf(eye, muscle);
    const { x, y } = along(eye, muscle, 60);
    assert.ok(x >= zone.x && x <= zone.x + zone.width && y >= zone.y && y <= zone.y + zone.height, `${eye} ${muscle}`);
  }
});

test('words stand on their own eye’s half', () => {
  for (const [eye, muscle] of everyPlace) assert.equal(wordsPlaceOf(eye, muscle).x < WIDTH / 2, eye === 'right');
});

test('the words of two muscles of an eye never stand in one line towards each other', () => {
  for (const eye of EYES) {
    const lines = MUSCLES.map((muscle) => wordsPlaceOf(eye, muscle)).flatMap(({ y, anchor }) => [[y, anchor], [y + LINE, anchor]]);
    const [start, end] = ['start', 'end'].map((side) => lines.filter(([, anchor]) => anchor === side).map(([y]) => y));
    for (const y of start) for (const other of end) assert.ok(Math.abs(y - other) >= LINE / 2);
  }
});
