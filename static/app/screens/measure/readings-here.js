/** The readings of the open place beside each other, and one more of the same. */
import { html } from '../../vendor/preact.js';
import { readingLines } from '../../words/reading.js';
import { METHOD_WORDS } from '../../words/taking.js';
import { repeated, readingAt, readingsIn, sameCell, wholeCell } from './cells.js';

/** @typedef {import('../../words/reading.js').Cell} Cell */
/** @typedef {import('../../words/reading.js').Reading} Reading */

/** @param {{readings: Reading[], cell: Cell, onOpen: (cell: Cell) => void}} props */
export function ReadingsHere({ readings, cell, onOpen }) {
  const here = readingsIn(readings, cell);
  const another = readingAt(readings, cell) ? repeated(readings, cell) : null;
  if (!another && here.length < 2) return null;
  return html`<div class="readings-here" role="group" aria-label="Readings here">
    ${here.length > 1 &&
    here.map((reading) => {
      const { method, repeat } = wholeCell(reading);
      const how = `${method === 'prism cover' ? '' : `${METHOD_WORDS[method]} `}${repeat === 1 ? '' : `no. ${repeat} `}`;
      return html`<button type="button" class="reading-here" key=${`${method} ${repeat}`} aria-current=${sameCell(reading, cell) ? 'true' : undefined} onClick=${() => onOpen(wholeCell(reading))}>
        ${how}<strong>${readingLines(reading).map(({ text }) => text).join(', ')}</strong>
      </button>`;
    })}
    ${another && html`<button type="button" class="button bare" onClick=${() => onOpen(another)}>Read it again</button>`}
  </div>`;
}
