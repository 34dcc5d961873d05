/** Touching in a plain figure, such as mm or a year, in a panel of its own; no system keyboard. */
import { html, useState } from '../../vendor/preact.js';
import { Sheet } from '../sheet/sheet.js';
import { figureEntry, figurePointed, figureTaken, figureTouched, rangeWords } from './figure-entry.js';
import { DIGIT_KEYS, Keys, keyOf } from './keys.js';

/**
 * @param {object} props
 * @param {string} props.title what the figure is
 * @param {number | null | undefined} props.value
 * @param {import('./figure-entry.js').Range} props.range
 * @param {boolean} [props.optional] no figure is an answer too
 * @param {(value: number | null) => void} props.onTake
 * @param {() => void} props.onClose
 */
export function FigurePad({ title, value, range, optional = false, onTake, onClose }) {
  const [entry, setEntry] = useState(figureEntry(value));
  /** @param {string} key */
  const press = (key) => setEntry(figureTouched(entry, key, range));
  const take = () => {
    const taken = figureTaken(entry, range);
    const missing = taken.value === null && !optional && !taken.refusal;
    const refusal = missing ? `No figure yet. Allowed: ${rangeWords(range)}.` : taken.refusal;
    if (refusal) setEntry({ ...entry, refusal });
    else onTake(taken.value);
  };
  /** @param {KeyboardEvent} event */
  const onKeyDown = (event) => {
    const key = keyOf(event);
    if (!key) return;
    press(key);
    event.preventDefault();
  };
  const keys = range.decimals === 0 ? DIGIT_KEYS.map((key) => (key.key === '.' ? { key: 'clear', words: html`<span class="key-word">clear</span>` } : key)) : DIGIT_KEYS;
  return html`<${Sheet} open=${true} title=${title} onClose=${onClose}>
    <form
      class="figure-pad"
      onKeyDown=${onKeyDown}
      onSubmit=${(/** @type {Event} */ event) => {
        event.preventDefault();
        take();
      }}
    >
      ${range.signs && html`<${Signs} label=${title} signs=${range.signs} chosen=${entry.sign} onSign=${(/** @type {import('./figure-entry.js').Sign} */ sign) => setEntry(figurePointed(entry, sign))} />`}
      <output class="figure-shown" aria-live="polite" tabindex="-1" autofocus>
        ${entry.sign && range.signs && html`<span class="figure-sign">${range.signs[entry.sign]}${' '}</span>`}${entry.typed.text || html`<span class="pad-unset">none</span>`}${entry.typed.text && range.unit && html`<span class="unit">${range.unit}</span>`}
      </output>
      <p class=${entry.refusal ? 'pad-refusal' : 'pad-hint'} role="status">${entry.refusal || `Allowed: ${rangeWords(range)}.`}</p>
      <${Keys} label=${title} layout="digits" keys=${keys} onKey=${(/** @type {string} */ key) => (key === 'clear' ? setEntry(figureEntry(null)) : press(key))} />
      <button type="submit" class="button main">Take this figure</button>
    </form>
  <//>`;
}

/** @param {{label: string, signs: import('./figure-entry.js').Signs, chosen: import('./figure-entry.js').Sign | null, onSign: (sign: any) => void}} props */
function Signs({ label, signs, chosen, onSign }) {
  const keys = Object.entries(signs).map(([sign, words]) => ({ key: sign, words, chosen: sign === chosen }));
  return html`<${Keys} label=${`${label}, direction`} layout="signs" keys=${keys} onKey=${onSign} />`;
}
