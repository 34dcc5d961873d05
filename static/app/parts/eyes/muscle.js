/** One muscle of the picture: a band, what is done to it by shape, and the words beside it. */
import { html } from '../../vendor/preact.js';
import { operationWords, wayOf } from '../../words/anatomy.js';
import { mmWords } from '../../words/figures.js';
import { END, INSERTION, brush } from './brush.js';
import { OPERATION_DRAWINGS } from './operations.js';
import { LINE, wordsPlaceOf } from './places.js';

/** @typedef {import('../../words/anatomy.js').Eye} Eye */
/** @typedef {import('../../words/anatomy.js').Muscle} Muscle */
/** @typedef {import('./eyes.js').Work} Work */

const OFFSET_AT = 62;

/** @param {{eye: Eye, muscle: Muscle, work?: Work}} props */
export function MuscleBand({ eye, muscle, work }) {
  const draw = brush(eye, muscle);
  if (!work) {
    return html`<g class="muscle-plain">
      <path class="muscle" d=${draw.band(INSERTION, END)} />
      <path class="muscle-fibre" d=${draw.fibres(INSERTION, END)} />
    </g>`;
  }
  const way = wayOf(work);
  return html`<g class="muscle-worked">
    ${OPERATION_DRAWINGS[work.operation](draw)}
    ${way && html`<path class="muscle-offset" d=${draw.aside(OFFSET_AT, way)} />`}
  </g>`;
}

/** The words beside a worked muscle: the operation, the mm where they are known, and where its tendon goes. @param {{eye: Eye, muscle: Muscle, work: Work}} props */
export function MuscleWords({ eye, muscle, work }) {
  const { x, y, anchor } = wordsPlaceOf(eye, muscle);
  const [first, second] = wordsOf(work);
  return html`<text class="muscle-words" x=${x} y=${y} text-anchor=${anchor}>
    <tspan class="muscle-operation" x=${x}>${first}</tspan>
    ${second && html`<tspan class="muscle-mm" x=${x} dy=${LINE}>${second}</tspan>`}
  </text>`;
}

/** Two lines at most. @param {Work} work @returns {string[]} */
function wordsOf(work) {
  const mm = typeof work.mm === 'number' ? [mmWords(work.mm)] : [];
  const way = wayOf(work);
  return way ? [[operationWords(work.operation), ...mm].join(' '), `moved ${way}`] : [operationWords(work.operation), ...mm];
}
