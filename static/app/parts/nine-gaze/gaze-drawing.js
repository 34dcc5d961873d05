/** One gaze: where the eyes stand, to scale, and the same in words. */
import { html } from '../../vendor/preact.js';
import { deviationWords } from '../../words/reading.js';
import { HEIGHT, WIDTH, acrossOf, upOf } from './scale.js';

const BAND_PD = 10;
const AFTER_Y = HEIGHT - 7;

/** @param {number} pd */
const horizontalWords = (pd) => (pd === 0 ? 'no horizontal' : deviationWords('horizontal', pd));

/** @param {{place: import('./scale.js').Place, reach_pd: number}} props */
export function GazeDrawing({ place, reach_pd }) {
  const { horizontal_pd = null, vertical_pd = null, raw_pd = null, after = null } = place;
  const [x, y] = [acrossOf(horizontal_pd ?? 0, reach_pd), upOf(vertical_pd ?? 0, reach_pd)];
  const [low, high] = [acrossOf(-BAND_PD, reach_pd), acrossOf(BAND_PD, reach_pd)];
  const [zeroX, zeroY] = [WIDTH / 2, HEIGHT / 2];
  return html`
    <svg class="nine-drawing" viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true" focusable="false">
      <rect class="nine-band" x=${low} y="2" width=${high - low} height=${HEIGHT - 4} rx="3" />
      <path class="nine-axes" d=${`M4 ${zeroY} H${WIDTH - 4} M${zeroX} 3 V${HEIGHT - 3}`} />
      <path class="nine-way" d=${`M${zeroX} ${zeroY} L${x} ${y}`} />
      <path class="nine-before" d=${`M${x} ${y - 5} l5 5 l-5 5 l-5 -5 z`} />
      ${after &&
      html`<path class="nine-interval" d=${`M${acrossOf(after.low_pd, reach_pd)} ${AFTER_Y} H${acrossOf(after.high_pd, reach_pd)}`} />
        <path class="nine-after" d=${`M${acrossOf(after.mean_pd, reach_pd)} ${AFTER_Y - 4.5} l4.5 4.5 l-4.5 4.5 l-4.5 -4.5 z`} />`}
    </svg>
    ${horizontal_pd !== null && html`<strong class="nine-figure">${horizontalWords(horizontal_pd)}</strong>`}
    ${raw_pd !== null && html`<span class="raw-figure">read ${horizontalWords(raw_pd)}</span>`}
    ${vertical_pd !== null && html`<strong class="nine-figure nine-vertical">${vertical_pd === 0 ? 'no vertical' : deviationWords('vertical', vertical_pd)}</strong>`}
    ${after && html`<span class="nine-then">after: <strong>${after.mean_pd === 0 ? 'straight' : deviationWords('horizontal', after.mean_pd)}</strong></span>`}
  `;
}
