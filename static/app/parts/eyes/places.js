/**
 * Where everything lies in the picture of both eyes, in units of the drawing (360 by 208), seen facing the patient:
 * the RIGHT eye on the left of the picture, each medial rectus towards the nose.
 *
 * A muscle is a band from its insertion outwards; its zone is what a finger may touch: a third of the eye's square each,
 * so that every zone stays 48 px wide on a screen of 320 px.
 */

/** @typedef {import('../../words/anatomy.js').Eye} Eye */
/** @typedef {import('../../words/anatomy.js').Muscle} Muscle */
/** @typedef {{x: number, y: number}} Point */

export const WIDTH = 360;
export const HEIGHT = 208;
export const GLOBE = 41;
export const LIMBUS = 18;

/** From one line of words to the next. */
export const LINE = 16;

const CELL = 60;
const MIDDLE_Y = 96;

/** Columns and rows of a zone, counted from the eye's temple to the nose and from the brow down. */
const ZONES = /** @type {Record<Muscle, [number, number]>} */ ({
  LR: [-1, 0],
  MR: [1, 0],
  SR: [0, -1],
  IR: [0, 1],
  SO: [1, -1],
  IO: [1, 1],
});

/** Direction of each band from the middle of the eye, as [towards the nose, down]. */
const TOWARDS = /** @type {Record<Muscle, [number, number]>} */ ({
  LR: [-1, 0],
  MR: [1, 0],
  SR: [0, -1],
  IR: [0, 1],
  SO: [Math.SQRT1_2, -Math.SQRT1_2],
  IO: [Math.SQRT1_2, Math.SQRT1_2],
});

/** @param {Eye} eye @returns {Point} */
export const middleOf = (eye) => ({ x: eye === 'right' ? 90 : 270, y: MIDDLE_Y });

/** +1 where the nose lies to the right of the picture. @param {Eye} eye */
const nasal = (eye) => (eye === 'right' ? 1 : -1);

/**
 * The unit vector in which a muscle runs back from the cornea, in the picture.
 * @param {Eye} eye
 * @param {Muscle} muscle
 * @returns {Point}
 */
export function runOf(eye, muscle) {
  const [nose, down] = TOWARDS[muscle];
  return { x: nose * nasal(eye), y: down };
}

/**
 * A point on the muscle's line, so far from the middle of the eye.
 * @param {Eye} eye
 * @param {Muscle} muscle
 * @param {number} away
 * @param {number} [aside] at right angles to it
 * @returns {Point}
 */
export function along(eye, muscle, away, aside = 0) {
  const middle = middleOf(eye);
  const run = runOf(eye, muscle);
  return { x: middle.x + run.x * away - run.y * aside, y: middle.y + run.y * away + run.x * aside };
}

/**
 * The touch zone of a muscle as a rectangle.
 * @param {Eye} eye
 * @param {Muscle} muscle
 */
export function zoneOf(eye, muscle) {
  const middle = middleOf(eye);
  const [column, row] = ZONES[muscle];
  return { x: middle.x + column * nasal(eye) * CELL - CELL / 2, y: middle.y + row * CELL - CELL / 2, width: CELL, height: CELL };
}

/**
 * Where the words of a muscle stand and from which end they run: those towards the nose end at the middle of the picture,
 * those towards the temple begin at its edge, so that long words neither meet nor leave the picture.
 * @param {Eye} eye
 * @param {Muscle} muscle
 * @returns {Point & {anchor: 'start' | 'middle' | 'end'}}
 */
export function wordsPlaceOf(eye, muscle) {
  const middle = middleOf(eye);
  const side = nasal(eye);
  /** @type {('start' | 'end')[]} */
  const [towardsNose, towardsTemple] = eye === 'right' ? ['end', 'start'] : ['start', 'end'];
  const nose = { x: WIDTH / 2 - side * 4, anchor: towardsNose };
  switch (muscle) {
    case 'MR':
      return { ...nose, y: middle.y + 28 };
    case 'LR':
      return { x: eye === 'right' ? 4 : WIDTH - 4, y: middle.y - 22 - LINE, anchor: towardsTemple };
    case 'SR':
      return { x: middle.x - side * 44, y: middle.y - 70, anchor: 'middle' };
    case 'IR':
      return { x: middle.x - side * 44, y: middle.y + 66, anchor: 'middle' };
    case 'SO':
      return { ...nose, y: middle.y - 62 };
    case 'IO':
      return { ...nose, y: middle.y + 66 };
  }
}
