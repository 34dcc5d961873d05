/** A course as the lines of a table: the figures of its pictures, direction as a word. Values in, values out. */
import { prismWords } from '../../words/figures.js';
import { DIRECTIONS, deviationWords } from '../../words/reading.js';

/** @typedef {'horizontal' | 'vertical'} Axis */
/** @typedef {{on: string, days_after: number, at: string, value_pd: number, limits_pd: number | null, is_inside: boolean | null, other_correction: boolean}} Point */
/** @typedef {{before_pd: number | null, expected: {mean_pd: number, low_pd: number, high_pd: number} | null, points: Point[]}} Line */
/** @typedef {{distance: Line, near: Line}} Ranges */
/** @typedef {{horizontal: Ranges, vertical: Ranges, warnings: any[], visits: {visit: string, seen_on: string, days_after: number, warnings: any[], statements: any[]}[], notices: any[], statements: any[], pictures: any[], operated_on: string, disclaimer: string}} Course */
/** @typedef {{axis: Axis, range: 'distance' | 'near', title: string}} Column */
/** @typedef {{words: string, aside: string}} Cell */
/** @typedef {{at: string, day: string, cells: Cell[]}} Row */

const COLUMNS = /** @type {Column[]} */ ([
  { axis: 'horizontal', range: 'distance', title: 'Distance' },
  { axis: 'horizontal', range: 'near', title: 'Near' },
  { axis: 'vertical', range: 'distance', title: 'Vertical, distance' },
  { axis: 'vertical', range: 'near', title: 'Vertical, near' },
]);
const NOTHING = { words: '–', aside: '' };

/** Those that hold anything; the horizontal ones always. @param {Course} course */
export const columnsOf = (course) =>
  COLUMNS.filter(({ axis, range }) => {
    const line = course[axis][range];
    return axis === 'horizontal' || line.before_pd !== null || line.expected !== null || line.points.length > 0;
  });

/**
 * Before the operation, what was expected, then every time of which something is told, in the order of their days. A visit at
 * which nothing was measured is a line too.
 * @param {Course} course
 * @returns {Row[]}
 */
export function rowsOf(course) {
  const columns = columnsOf(course);
  const points = columns.flatMap(({ axis, range }) => course[axis][range].points);
  const visits = course.visits.map(({ visit, seen_on, days_after }) => ({ at: visit, on: seen_on, days_after }));
  /** @type {Map<string, {at: string, on: string, days_after: number}>} */
  const times = new Map([...points, ...visits].map((each) => [`${each.on} ${each.at}`, each]));
  const found = [...times.values()].sort((a, b) => (orderOf(a) < orderOf(b) ? -1 : 1));
  const of = (/** @type {Column} */ { axis, range }) => course[axis][range];
  return [
    { at: 'Before surgery', day: '', cells: columns.map((column) => value(column.axis, of(column).before_pd)) },
    { at: 'Expected', day: '', cells: columns.map((column) => expected(column.axis, of(column).expected)) },
    ...found.map(({ at, on, days_after }) => ({
      at,
      day: `day ${days_after}`,
      cells: columns.map((column) => {
        const point = of(column).points.find((each) => each.on === on && each.at === at);
        return point ? measured(column.axis, point) : NOTHING;
      }),
    })),
  ];
}

/** Before an adjustment, after it, then the visit of the same day. @param {{on: string, at: string}} time */
const orderOf = ({ on, at }) => `${on} ${{ 'Before adjustment': 0, 'After adjustment': 1 }[at] ?? 2} ${at}`;

/** @param {Axis} axis @param {number | null} pd @returns {Cell} */
const value = (axis, pd) => (pd === null ? NOTHING : { words: deviationWords(axis, pd), aside: '' });

/** @param {Axis} axis @param {Line['expected']} band @returns {Cell} */
const expected = (axis, band) => (band ? { words: deviationWords(axis, tenth(band.mean_pd)), aside: `${edge(axis, band.low_pd)} to ${edge(axis, band.high_pd)}` } : NOTHING);

/** @param {Axis} axis @param {Point} point @returns {Cell} */
function measured(axis, { value_pd, limits_pd, is_inside, other_correction }) {
  const aside = [
    ...(limits_pd ? [`± ${prismWords(limits_pd)}`] : []),
    ...(is_inside === false ? ['outside what was expected'] : []),
    ...(other_correction ? ['other correction'] : []),
  ];
  return { words: deviationWords(axis, tenth(value_pd)), aside: aside.join(', ') };
}

/** @param {Axis} axis @param {number} pd */
const edge = (axis, pd) => (tenth(pd) === 0 ? '0' : `${DIRECTIONS[axis][pd > 0 ? 'plus' : 'minus']} ${prismWords(pd)}`);

/** @param {number} pd */
const tenth = (pd) => Math.round(pd * 10) / 10;
