/** The gaze map of the range and correction in view, over the sitting's readings. */
import { GazeMap } from '../../parts/gaze-map/gaze-map.js';
import { html } from '../../vendor/preact.js';
import { CORRECTION_WORDS, RANGE_WORDS, readingLines } from '../../words/reading.js';
import { readingAt } from './cells.js';

/** @typedef {import('../../words/reading.js').Cell} Cell */

/** @param {{sitting: import('./sitting.js').Sitting, offered: Cell | null, onOpen: (cell: Cell) => void}} props */
export function MeasureMap({ sitting: { draft, range, correction, open }, offered, onOpen }) {
  /** @param {string} gaze */
  const cellAt = (gaze) => ({ gaze, range, correction });
  const inView = offered?.range === range && offered.correction === correction;
  return html`<${GazeMap}
    linesOf=${(/** @type {string} */ gaze) => readingLines(readingAt(draft.readings, cellAt(gaze)))}
    conditions=${`${RANGE_WORDS[range]}, ${CORRECTION_WORDS[correction]}`}
    open=${open?.cell.gaze ?? null}
    offered=${inView ? offered.gaze : null}
    compact=${open !== null}
    onOpen=${(/** @type {string} */ gaze) => onOpen(cellAt(gaze))}
  />`;
}
