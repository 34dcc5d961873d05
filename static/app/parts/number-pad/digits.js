/** Typing a figure without a keyboard: a text of digits that is always a number in the making. */

/** @typedef {{text: string, fresh: boolean}} Typed `fresh`: the next digit begins a new figure. */
/** @typedef {{code: 'too_large' | 'too_fine'}} Refusal */

/** @type {Typed} */
export const NOTHING = { text: '', fresh: true };

/**
 * The figure as it stands, which a next digit replaces.
 * @param {number | null | undefined} value
 * @returns {Typed}
 */
export const typedFrom = (value) => ({ text: value == null ? '' : String(Math.abs(value)), fresh: true });

/** @param {Typed} typed */
export const valueOf = (typed) => (typed.text === '' ? null : Number(typed.text));

/**
 * The text after one more key ('0' to '9', or '.'), or a refusal that leaves it as it was.
 * @param {Typed} typed
 * @param {string} key
 * @param {{high: number, decimals: number}} limit
 * @returns {{typed: Typed, refusal: Refusal | null}}
 */
export function press(typed, key, { high, decimals }) {
  const before = typed.fresh ? '' : typed.text;
  if (key === '.') {
    if (decimals === 0) return { typed, refusal: { code: 'too_fine' } };
    if (before.includes('.')) return { typed, refusal: null };
    return { typed: { text: `${before || '0'}.`, fresh: false }, refusal: null };
  }
  const text = before === '0' ? key : before + key;
  if ((text.split('.')[1] ?? '').length > decimals) return { typed, refusal: { code: 'too_fine' } };
  if (Number(text) > high) return { typed, refusal: { code: 'too_large' } };
  return { typed: { text, fresh: false }, refusal: null };
}

/**
 * The text without its last character.
 * @param {Typed} typed
 * @returns {Typed}
 */
export function erase(typed) {
  const text = typed.text.slice(0, -1);
  return { text, fresh: text === '' };
}
