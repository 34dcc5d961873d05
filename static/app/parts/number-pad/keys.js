/** A grid of large keys, each one touch. */
import { html } from '../../vendor/preact.js';

/** @typedef {{key: string, words: unknown, label?: string, chosen?: boolean, wide?: boolean}} Key */

/**
 * @param {object} props
 * @param {string} props.label what the keys are for
 * @param {Key[]} props.keys
 * @param {string} props.layout `steps`, `digits` or `directions`
 * @param {boolean} [props.waiting] touched now they would only say what is missing first
 * @param {(key: string) => void} props.onKey
 */
export function Keys({ label, keys, layout, waiting = false, onKey }) {
  return html`<div class="keys keys-${layout}" role="group" aria-label=${label}>
    ${keys.map(
      ({ key, words, label: spoken, chosen, wide }) => html`<button
        key=${key}
        type="button"
        class=${`key${wide ? ' key-wide' : ''}${waiting ? ' key-waiting' : ''}`}
        aria-label=${spoken}
        aria-pressed=${chosen === undefined ? undefined : String(chosen)}
        onClick=${() => onKey(key)}
      >
        ${words}
      </button>`,
    )}
  </div>`;
}

/** The digits as on a telephone, with zero, point and erase in a fourth column, so that three rows are enough. */
export const DIGIT_KEYS = [
  ...digits('123'),
  { key: 'erase', words: html`<span class="key-word">erase</span>` },
  ...digits('456'),
  { key: '.', words: '.', label: 'point' },
  ...digits('789'),
  ...digits('0'),
];

/** @param {string} text @returns {Key[]} */
function digits(text) {
  return [...text].map((digit) => ({ key: digit, words: digit }));
}

/**
 * The pad's key for a key of a keyboard, or null: digits, point (or comma) and backspace.
 * @param {KeyboardEvent} event
 */
export function keyOf(event) {
  if (event.ctrlKey || event.metaKey || event.altKey) return null;
  if (/^[0-9]$/.test(event.key)) return event.key;
  if (event.key === '.' || event.key === ',') return '.';
  return event.key === 'Backspace' ? 'erase' : null;
}
