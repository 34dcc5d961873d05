/**
 * Who says English texts in a language, with their values in place of `{names}`.
 *
 * What has no translation is said in English. In a language that runs from right to left each value is set apart (U+2068 ...
 * U+2069), so that figures, units and names keep their own direction.
 */

/** @typedef {Record<string, string | number>} Values */
/** @typedef {{text: string, values: Values}} Said as the engine's pages give it */

/**
 * @typedef {object} Speaker
 * @property {import('./languages.js').Code} language
 * @property {'ltr' | 'rtl'} direction
 * @property {{by: string, on: string} | null} reviewed who reviewed the translation; null for English too
 * @property {(text: string, values?: Values) => string} say
 * @property {(one: string, many: string, count: number, values?: Values) => string} sayCount `{count}` is among the values
 * @property {(said: Said) => string} said
 */

const LISTED = 200;
const CYCLE = 100;

/**
 * @param {import('./languages.js').Catalogue | null} catalogue null for English
 * @returns {Speaker}
 */
export function speakerOf(catalogue) {
  const texts = catalogue?.texts ?? {};
  const direction = catalogue?.direction ?? 'ltr';
  const apart = direction === 'rtl' ? (/** @type {string | number} */ value) => `\u2068${value}\u2069` : String;
  const fill = (/** @type {string} */ text, /** @type {Values} */ values) =>
    text.replace(/\{(\w+)\}/g, (whole, name) => (name in values ? apart(values[name]) : whole));
  /** @type {Speaker['say']} */
  const say = (text, values = {}) => {
    const found = Object.hasOwn(texts, text) ? texts[text] : text;
    return fill(typeof found === 'string' ? found : found[0], values);
  };
  return {
    language: catalogue?.language ?? 'en',
    direction,
    reviewed: catalogue?.reviewed ?? null,
    say,
    said: ({ text, values }) => say(text, values),
    sayCount: (one, many, count, values = {}) => {
      const forms = Object.hasOwn(texts, one) ? texts[one] : null;
      const form = catalogue && Array.isArray(forms) ? forms[formOf(catalogue.plural, count)] : count === 1 ? one : many;
      return fill(form, { count, ...values });
    },
  };
}

/** @param {string} digits @param {number} count a whole number from 0 */
const formOf = (digits, count) => Number(digits[count < LISTED ? count : CYCLE + (count % CYCLE)]);
