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

/** The ten digits, the point and erase, as on a telephone. */
export const DIGIT_KEYS = [
  ...['1', '2', '3', '4', '5', '6', '7', '8', '9'].map((digit) => ({ key: digit, words: digit })),
  { key: '.', words: '.', label: 'point' },
  { key: '0', words: '0' },
  { key: 'erase', words: html`<span class="key-word">erase</span>` },
];

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
