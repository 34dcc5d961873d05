/** What can be drawn along one muscle, in distances from the middle of the eye. */
import { along } from './places.js';

/** @typedef {import('../../words/anatomy.js').Eye} Eye */
/** @typedef {import('../../words/anatomy.js').Muscle} Muscle */
/** @typedef {ReturnType<typeof brush>} Brush */

/** Where a band begins and ends. */
export const INSERTION = 26;
export const END = 82;
const HALF = 10;

/** @param {import('./places.js').Point} point */
const at = ({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`;

/**
 * @param {Eye} eye
 * @param {Muscle} muscle
 */
export function brush(eye, muscle) {
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
    /** An arrow at right angles to the band, up or down in the picture. @param {number} away @param {'up' | 'down'} way */
    aside(away, way) {
      const { x, y } = along(eye, muscle, away);
      const [from, to, back] = way === 'up' ? [y + 12, y - 18, 6] : [y - 12, y + 18, -6];
      return `M${x} ${from} V${to} M${x - 5} ${to + back} L${x} ${to} L${x + 5} ${to + back}`;
    },
    /** The tendon doubled on itself. @param {number} from @param {number} to */
    loop: (from, to) => `M${point(from, half(from))} C${point(from - 4, half(from) + 12)} ${point(to + 4, half(to) + 12)} ${point(to, half(to))}`,
    /** The front half of the band alone. @param {number} from @param {number} to */
    strip: (from, to) => `M${point(from, -half(from))} L${point(from, 0)} L${point(to, 0)} L${point(to, -half(to))} Z`,
    /** @param {number} from @param {number} to */
    piece: (from, to) => `M${point(from, -half(from))} L${point(from, half(from))} L${point(to, half(to))} L${point(to, -half(to))} Z`,
    /** @param {number} from @param {number} to */
    hatch: (from, to) => `M${point(from, -half(from))} L${point(to, half(to))} M${point(from, half(from))} L${point(to, -half(to))}`,
  };
}
