/**
 * One muscle of the picture: a band, and what is done to it by shape and word.
 *
 * Recess: the band starts further back, its old insertion stays as a broken line, an arrow points back.
 * Resect: a hatched piece is taken out at the front between two bars, an arrow points to the cornea.
 */
import { html } from '../../vendor/preact.js';
import { mmWords } from '../../words/figures.js';
import { along, wordsPlaceOf } from './places.js';

/** @typedef {import('../../words/anatomy.js').Eye} Eye */
/** @typedef {import('../../words/anatomy.js').Muscle} Muscle */
/** @typedef {{operation: string, mm?: number}} Work */

const INSERTION = 27;
const END = 86;
const HALF = 9;

/** @param {import('./places.js').Point} point */
const at = ({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`;

/**
 * @param {Eye} eye
 * @param {Muscle} muscle
 */
function brush(eye, muscle) {
  /** @param {number} away @param {number} [aside] */
  const point = (away, aside) => at(along(eye, muscle, away, aside));
  return {
    /** @param {number} from @param {number} to */
    band: (from, to) => `${point(from, -HALF)} ${point(from, HALF)} ${point(to, HALF * 0.7)} ${point(to, -HALF * 0.7)}`,
    /** @param {number} away @param {number} reach */
    across: (away, reach) => `M${point(away, -reach)} L${point(away, reach)}`,
    /** @param {number} from @param {number} to */
    arrow(from, to) {
      const back = to > from ? -6 : 6;
      return `M${point(from)} L${point(to)} M${point(to + back, -5)} L${point(to)} L${point(to + back, 5)}`;
    },
    /** @param {number} from @param {number} to */
    hatch: (from, to) => [0, 1, 2].map((step) => `M${point(from + 3 + step * 5, -HALF)} L${point(Math.min(to, from + 8 + step * 5), HALF)}`).join(' '),
  };
}

/** @param {{eye: Eye, muscle: Muscle, work?: Work}} props */
export function MuscleBand({ eye, muscle, work }) {
  const draw = brush(eye, muscle);
  if (!work) return html`<polygon class="muscle" points=${draw.band(INSERTION, END)} />`;
  if (work.operation === 'recess') {
    return html`<g class="muscle-worked">
      <path class="muscle-old" d=${draw.across(INSERTION, HALF + 2)} />
      <polygon class="muscle worked" points=${draw.band(INSERTION + 17, END)} />
      <path class="muscle-new" d=${draw.across(INSERTION + 17, HALF + 3)} />
      <path class="muscle-arrow" d=${draw.arrow(INSERTION + 23, END - 8)} />
    </g>`;
  }
  return html`<g class="muscle-worked">
    <polygon class="muscle worked" points=${draw.band(INSERTION, END)} />
    <polygon class="muscle-out" points=${draw.band(INSERTION, INSERTION + 19)} />
    <path class="muscle-hatch" d=${draw.hatch(INSERTION, INSERTION + 19)} />
    <path class="muscle-new" d=${`${draw.across(INSERTION, HALF + 3)} ${draw.across(INSERTION + 19, HALF + 3)}`} />
    <path class="muscle-arrow" d=${draw.arrow(END - 4, INSERTION + 25)} />
  </g>`;
}

/** The words beside a worked muscle: the operation, and the mm where they are known. @param {{eye: Eye, muscle: Muscle, work: Work}} props */
export function MuscleWords({ eye, muscle, work }) {
  const { x, y } = wordsPlaceOf(eye, muscle);
  return html`<text class="muscle-words" x=${x} y=${y} text-anchor="middle">
    <tspan class="muscle-operation" x=${x}>${work.operation}</tspan>
    ${work.mm !== undefined && html`<tspan class="muscle-mm" x=${x} dy="15">${mmWords(work.mm)}</tspan>`}
  </text>`;
}
