/**
 * One muscle of the picture: a band, and what is done to it by shape and word.
 *
 * Recess: the band starts further back, its old insertion stays as a broken line, an arrow points back.
 * Resect: a crossed-out piece at the front between two bars, an arrow points to the cornea.
 */
import { html } from '../../vendor/preact.js';
import { mmWords } from '../../words/figures.js';
import { along, wordsPlaceOf } from './places.js';

/** @typedef {import('../../words/anatomy.js').Eye} Eye */
/** @typedef {import('../../words/anatomy.js').Muscle} Muscle */
/** @typedef {{operation: string, mm?: number}} Work */

const INSERTION = 26;
const END = 82;
const HALF = 10;
const MOVED = 16;

/** @param {import('./places.js').Point} point */
const at = ({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`;

/**
 * What can be drawn along one muscle, in distances from the middle of the eye.
 * @param {Eye} eye
 * @param {Muscle} muscle
 */
function brush(eye, muscle) {
  /** @param {number} away @param {number} [aside] */
  const point = (away, aside) => at(along(eye, muscle, away, aside));
  /** @param {number} away */
  const half = (away) => HALF - ((away - INSERTION) / (END - INSERTION)) * 4;
  return {
    /** A band that narrows backwards and ends round. @param {number} from @param {number} to */
    band: (from, to) =>
      `M${point(from, -half(from))} L${point(from, half(from))} L${point(to - 4, half(to))} Q${point(to, half(to))} ${point(to, 0)} Q${point(to, -half(to))} ${point(to - 4, -half(to))} Z`,
    /** Two fibres. @param {number} from @param {number} to */
    fibres: (from, to) => [-3, 3].map((aside) => `M${point(from + 2, aside)} L${point(to - 6, aside * 0.7)}`).join(' '),
    /** @param {number} away @param {number} beyond the band, to each side */
    across: (away, beyond) => `M${point(away, -half(away) - beyond)} L${point(away, half(away) + beyond)}`,
    /** @param {number} from @param {number} to */
    arrow(from, to) {
      const back = to > from ? -7 : 7;
      return `M${point(from)} L${point(to)} M${point(to + back, -5)} L${point(to)} L${point(to + back, 5)}`;
    },
    /** @param {number} from @param {number} to */
    piece: (from, to) => `M${point(from, -half(from))} L${point(from, half(from))} L${point(to, half(to))} L${point(to, -half(to))} Z`,
    /** @param {number} from @param {number} to */
    hatch: (from, to) => `M${point(from, -half(from))} L${point(to, half(to))} M${point(from, half(from))} L${point(to, -half(to))}`,
  };
}

/** @param {{eye: Eye, muscle: Muscle, work?: Work}} props */
export function MuscleBand({ eye, muscle, work }) {
  const draw = brush(eye, muscle);
  const moved = INSERTION + MOVED;
  if (!work) {
    return html`<g class="muscle-plain">
      <path class="muscle" d=${draw.band(INSERTION, END)} />
      <path class="muscle-fibre" d=${draw.fibres(INSERTION, END)} />
    </g>`;
  }
  if (work.operation === 'recess') {
    return html`<g class="muscle-worked">
      <path class="muscle-old" d=${draw.across(INSERTION, 2)} />
      <path class="muscle worked" d=${draw.band(moved, END)} />
      <path class="muscle-new" d=${draw.across(moved, 3)} />
      <path class="muscle-arrow" d=${draw.arrow(moved + 7, END - 8)} />
    </g>`;
  }
  return html`<g class="muscle-worked">
    <path class="muscle worked" d=${draw.band(INSERTION, END)} />
    <path class="muscle-out" d=${draw.piece(INSERTION, moved)} />
    <path class="muscle-hatch" d=${draw.hatch(INSERTION, moved)} />
    <path class="muscle-new" d=${`${draw.across(INSERTION, 3)} ${draw.across(moved, 3)}`} />
    <path class="muscle-arrow" d=${draw.arrow(END - 6, moved + 7)} />
  </g>`;
}

/** The words beside a worked muscle: the operation, and the mm where they are known. @param {{eye: Eye, muscle: Muscle, work: Work}} props */
export function MuscleWords({ eye, muscle, work }) {
  const { x, y } = wordsPlaceOf(eye, muscle);
  return html`<text class="muscle-words" x=${x} y=${y} text-anchor="middle">
    <tspan class="muscle-operation" x=${x}>${work.operation}</tspan>
    ${work.mm !== undefined && html`<tspan class="muscle-mm" x=${x} dy="16">${mmWords(work.mm)}</tspan>`}
  </text>`;
}
