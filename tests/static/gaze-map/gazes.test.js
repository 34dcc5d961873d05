import assert from 'node:assert/strict';
import { test } from 'node:test';
import { edgeWords, mapRows, neighbour, tiltRow } from '../../../static/app/parts/gaze-map/gazes.js';

const ALL = ['up_right', 'up', 'up_left', 'right', 'primary', 'left', 'down_right', 'down', 'down_left'];

test("facing the patient, the patient's right is on the left of the picture", () => {
  assert.deepEqual(edgeWords('facing'), ["patient's right", "patient's left"]);
  assert.deepEqual(mapRows('facing')[1], ['right', 'primary', 'left']);
  assert.deepEqual(tiltRow('facing'), ['tilt_right', 'tilt_left']);
});

test("through the patient's eyes, the patient's right is on the right of the picture", () => {
  assert.deepEqual(edgeWords('through'), ["patient's left", "patient's right"]);
  assert.deepEqual(mapRows('through')[1], ['left', 'primary', 'right']);
  assert.deepEqual(tiltRow('through'), ['tilt_left', 'tilt_right']);
});

test('the words at an edge name the side of the gazes beside it, in both orientations', () => {
  for (const orientation of ['facing', 'through']) {
    const [atLeft] = edgeWords(orientation);
    const side = atLeft.endsWith('right') ? 'right' : 'left';
    for (const [first] of mapRows(orientation)) assert.ok(first.endsWith(side));
    assert.ok(tiltRow(orientation)[0].endsWith(side));
  }
});

test('turning the map mirrors it and loses no gaze; up stays up', () => {
  assert.deepEqual([...mapRows('through').flat()].sort(), [...ALL].sort());
  assert.deepEqual(mapRows('through').map((row) => row.toReversed()), mapRows('facing'));
});

test('arrow keys follow the picture, not the patient', () => {
  assert.equal(neighbour('primary', 'ArrowLeft', 'facing'), 'right');
  assert.equal(neighbour('primary', 'ArrowLeft', 'through'), 'left');
  assert.equal(neighbour('primary', 'ArrowUp', 'facing'), 'up');
  assert.equal(neighbour('up', 'ArrowUp', 'facing'), 'up');
});

test('the tilts are one step below the map, and arrows lead out again', () => {
  assert.equal(neighbour('down_right', 'ArrowDown', 'facing'), 'tilt_right');
  assert.equal(neighbour('down_left', 'ArrowDown', 'facing'), 'tilt_left');
  assert.equal(neighbour('tilt_right', 'ArrowRight', 'facing'), 'tilt_left');
  assert.equal(neighbour('tilt_left', 'ArrowUp', 'facing'), 'down_left');
});

test('every place can be reached from the primary position by arrows alone', () => {
  const reached = new Set(['primary']);
  for (const gaze of reached) {
    for (const key of ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight']) reached.add(neighbour(gaze, key, 'facing'));
  }
  assert.deepEqual([...reached].sort(), [...ALL, 'tilt_left', 'tilt_right'].sort());
});
