/**
 * Where each gaze lies on the map, in the two ways a surgeon may want to see it.
 *
 * `through`: as the patient sees, patient's right on the right of the picture. `facing`: as seen across the table,
 * patient's right on the left.
 */

/** @typedef {'facing' | 'through'} Orientation */

/** @type {Record<Orientation, string>} */
export const ORIENTATION_WORDS = {
  facing: 'Seen facing the patient',
  through: "Seen through the patient's eyes",
};

/** Rows from the top, columns from the patient's right. */
const BY_PATIENT = [
  ['up_right', 'up', 'up_left'],
  ['right', 'primary', 'left'],
  ['down_right', 'down', 'down_left'],
];

const TILTS = ['tilt_right', 'tilt_left'];

/**
 * The nine gazes as rows from the top, each from the left of the picture.
 * @param {Orientation} orientation
 */
export const mapRows = (orientation) => BY_PATIENT.map((row) => turned(row, orientation));

/**
 * The two head tilts from the left of the picture.
 * @param {Orientation} orientation
 */
export const tiltRow = (orientation) => turned(TILTS, orientation);

/**
 * The words at the left and the right edge of the picture.
 * @param {Orientation} orientation
 */
export const edgeWords = (orientation) => turned(["patient's right", "patient's left"], orientation);

/**
 * @param {string[]} fromPatientsRight
 * @param {Orientation} orientation
 */
function turned(fromPatientsRight, orientation) {
  return orientation === 'facing' ? fromPatientsRight : [...fromPatientsRight].reverse();
}

/** @type {Record<string, [number, number]>} */
const ARROWS = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] };

/**
 * The gaze that an arrow key leads to, as the picture lies; the tilts are the row below. Stays at the edge.
 * @param {string} gaze
 * @param {string} key
 * @param {Orientation} orientation
 */
export function neighbour(gaze, key, orientation) {
  const step = ARROWS[key];
  if (!step) return gaze;
  const rows = [...mapRows(orientation), tiltRow(orientation)];
  const row = rows.findIndex((cells) => cells.includes(gaze));
  const column = spread(rows[row]).indexOf(gaze);
  const nextRow = clamp(row + step[0], rows.length);
  const nextColumn = clamp(column + step[1], 3);
  if (nextRow !== row) return spread(rows[nextRow])[column];
  return rows[row].length === 2 ? rows[row][step[1] > 0 ? 1 : 0] : rows[row][nextColumn];
}

/** @param {string[]} row A row of two lies under the outer columns; its first cell reaches to the middle. */
const spread = (row) => (row.length === 2 ? [row[0], row[0], row[1]] : row);

/**
 * @param {number} index
 * @param {number} count
 */
const clamp = (index, count) => Math.max(0, Math.min(count - 1, index));
