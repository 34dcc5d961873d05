/**
 * The state of a prism reading while it is touched in: a direction word first, then a figure.
 *
 * Values in, values out; nothing of the screen. A refusal never changes a figure.
 */

import { DIRECTIONS } from '../../words/reading.js';
import { NOTHING, erase, press, typedFrom, valueOf } from './digits.js';
import { LIMITS } from './limits.js';

/** @typedef {import('../../words/reading.js').Axis} Axis */
/** @typedef {'plus' | 'minus'} Sign */
/** @typedef {{sign: Sign | null, typed: import('./digits.js').Typed}} Part */
/** @typedef {{axis: Axis, code: string, text: string, allowed: string}} Refusal */
/** @typedef {{axis: Axis | null, horizontal: Part, vertical: Part, refusal: Refusal | null}} Entry */
/**
 * @typedef {{type: 'direction', axis: Axis, sign: Sign} | {type: 'none', axis: Axis} | {type: 'step', pd: number}
 *   | {type: 'key', key: string} | {type: 'erase'} | {type: 'clear', axis: Axis}} Touch
 */

/** @type {Part} */
const EMPTY = { sign: null, typed: NOTHING };

/** @type {Axis[]} */
const AXES = ['horizontal', 'vertical'];

/**
 * @param {number | null | undefined} pd
 * @returns {Part}
 */
function partFrom(pd) {
  if (pd == null) return EMPTY;
  return { sign: pd === 0 ? null : pd > 0 ? 'plus' : 'minus', typed: typedFrom(pd) };
}

/**
 * The entry that shows a reading, or an empty one.
 * @param {Partial<import('../../words/reading.js').Reading>} [reading]
 * @returns {Entry}
 */
export function entryFrom(reading) {
  const horizontal = partFrom(reading?.horizontal_pd);
  const vertical = partFrom(reading?.vertical_pd);
  const axis = horizontal.sign ? 'horizontal' : vertical.sign ? 'vertical' : null;
  return { axis, horizontal, vertical, refusal: null };
}

/**
 * The signed figure of one axis: null while there is none.
 * @param {Entry} entry
 * @param {Axis} axis
 */
export function figure(entry, axis) {
  const { sign, typed } = entry[axis];
  const size = valueOf(typed);
  if (size === null || size === 0) return size;
  return sign === 'minus' ? -size : size;
}

/**
 * The two figures as a reading keeps them.
 * @param {Entry} entry
 */
export const figures = (entry) => ({
  horizontal_pd: figure(entry, 'horizontal'),
  vertical_pd: figure(entry, 'vertical'),
});

/**
 * The refusal that keeps the entry from being left: a direction without its figure.
 * @param {Entry} entry
 * @returns {Refusal | null}
 */
export function unfinished(entry) {
  for (const axis of AXES) {
    const { sign, typed } = entry[axis];
    if (sign && typed.text === '') {
      const word = DIRECTIONS[axis][sign];
      const text = `${word} has no figure yet.`;
      return { axis, code: 'needs_figure', text, allowed: `A figure, or touch ${word} again to take it back.` };
    }
  }
  return null;
}

/**
 * The entry after one touch.
 * @param {Entry} entry
 * @param {Touch} touch
 * @returns {Entry}
 */
export function touched(entry, touch) {
  switch (touch.type) {
    case 'direction':
      return pointed(entry, touch.axis, touch.sign);
    case 'none':
      return { ...entry, axis: null, refusal: null, [touch.axis]: { sign: null, typed: { text: '0', fresh: true } } };
    case 'clear':
      return { ...entry, axis: null, refusal: null, [touch.axis]: EMPTY };
    case 'step':
      return sized(entry, () => ({ typed: { text: String(touch.pd), fresh: true }, refusal: null }));
    case 'key':
      return sized(entry, (part, limit) => press(part.typed, touch.key, limit));
    case 'erase':
      return sized(entry, (part) => ({ typed: erase(part.typed), refusal: null }));
  }
}

/**
 * @param {Entry} entry
 * @param {Axis} axis
 * @param {Sign} sign
 * @returns {Entry}
 */
function pointed(entry, axis, sign) {
  const part = entry[axis];
  const takenBack = part.sign === sign && part.typed.text === '';
  if (takenBack) return { ...entry, axis: null, refusal: null, [axis]: EMPTY };
  const none = part.typed.text !== '' && valueOf(part.typed) === 0;
  const typed = none ? NOTHING : { ...part.typed, fresh: true };
  return { ...entry, axis, refusal: null, [axis]: { sign, typed } };
}

/**
 * @param {Entry} entry
 * @param {(part: Part, limit: {high: number, decimals: number}) => {typed: import('./digits.js').Typed, refusal: import('./digits.js').Refusal | null}} change
 * @returns {Entry}
 */
function sized(entry, change) {
  const { axis } = entry;
  if (axis === null || entry[axis].sign === null) {
    return { ...entry, refusal: NEEDS_DIRECTION };
  }
  const { high } = LIMITS[`${axis}_pd`];
  const { typed, refusal } = change(entry[axis], { high, decimals: 1 });
  return {
    ...entry,
    [axis]: { ...entry[axis], typed },
    refusal: refusal && { axis, code: refusal.code, ...REFUSAL_WORDS[refusal.code](DIRECTIONS[axis][entry[axis].sign], high) },
  };
}

/** @type {Refusal} */
const NEEDS_DIRECTION = {
  axis: 'horizontal',
  code: 'needs_direction',
  text: 'A figure needs its direction first.',
  allowed: 'eso, exo, right hyper or left hyper.',
};

/** @type {Record<string, (word: string, high: number) => {text: string, allowed: string}>} */
const REFUSAL_WORDS = {
  too_large: (word, high) => ({ text: `${word} cannot be that large.`, allowed: `0 to ${high} Δ.` }),
  too_fine: (word) => ({ text: `${word} is read no finer than a tenth.`, allowed: 'One decimal.' }),
};
