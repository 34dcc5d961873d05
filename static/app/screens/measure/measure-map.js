/** The gaze map of the range, correction and condition in view, over the sitting's readings. */
import { GazeMap } from '../../parts/gaze-map/gaze-map.js';
import { html } from '../../vendor/preact.js';
import { CORRECTION_WORDS, RANGE_WORDS, readingLines } from '../../words/reading.js';
import { CONDITION_WORDS, METHOD_WORDS } from '../../words/taking.js';
import { readingsIn } from './cells.js';

/** @typedef {import('../../words/reading.js').Cell} Cell */

/** @param {{sitting: import('./sitting.js').Sitting, offered: Cell | null, onOpen: (cell: Cell) => void}} props */
export function MeasureMap({ sitting: { draft, range, correction, taking, open }, offered, onOpen }) {
  const { condition } = taking;
  /** @param {string} gaze */
  const cellAt = (gaze) => ({ gaze, range, correction, condition });
  /** What was read there first, and that there is more. @param {string} gaze */
  const linesOf = (gaze) => {
    const [first, ...more] = readingsIn(draft.readings, cellAt(gaze));
    const method = first?.method && first.method !== 'prism cover' ? [{ axis: 'aside', text: METHOD_WORDS[first.method] }] : [];
    return [...readingLines(first), ...method, ...(more.length ? [{ axis: 'aside', text: `and ${more.length} more` }] : [])];
  };
  const inView = offered?.range === range && offered.correction === correction && (offered.condition ?? 'plain') === condition;
  return html`<${GazeMap}
    linesOf=${linesOf}
    conditions=${[RANGE_WORDS[range], CORRECTION_WORDS[correction], ...(condition === 'plain' ? [] : [CONDITION_WORDS[condition]])].join(', ')}
    open=${open?.cell.gaze ?? null}
    offered=${inView ? offered.gaze : null}
    compact=${open !== null}
    onOpen=${(/** @type {string} */ gaze) => onOpen(cellAt(gaze))}
  />`;
}
