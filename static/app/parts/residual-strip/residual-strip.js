/**
 * Where the eye is expected to end: straight as the zero line, the band of 10 Δ to each side in which a result usually
 * counts as a success, and the expected deviation as the engine gives it.
 */
import { html } from '../../vendor/preact.js';
import { deviationWords } from '../../words/reading.js';
import { WIDTH, placeOf, spanWords } from './scale.js';

const BAND_PD = 10;
const LINE_Y = 42;

/**
 * @param {object} props
 * @param {number} props.expected_pd eso +, exo -
 * @param {number} props.reach_pd of the scale to each side; the same for all that are compared
 * @param {{low_pd: number, high_pd: number} | null} [props.interval] in which it lies 95 times of 100
 */
export function ResidualStrip({ expected_pd, reach_pd, interval = null }) {
  const words = expected_pd === 0 ? 'straight' : deviationWords('horizontal', expected_pd);
  const [low, zero, high, mark] = [-BAND_PD, 0, BAND_PD, expected_pd].map((pd) => placeOf(pd, reach_pd));
  const anchor = mark < 70 ? 'start' : mark > WIDTH - 70 ? 'end' : 'middle';
  const ends = interval && [interval.low_pd, interval.high_pd].map((pd) => placeOf(pd, reach_pd));
  const between = interval ? ` In 95 of 100 between ${spanWords(interval)}.` : '';
  return html`<svg class="residual-strip" viewBox=${`0 0 ${WIDTH} 74`} role="img" aria-label=${`Expected after surgery: ${words}.${between} The band reaches 10 Δ to each side of straight.`}>
    <rect class="strip-band" x=${low} y=${LINE_Y - 12} width=${high - low} height="24" rx="4" />
    <path class="strip-line" d=${`M8 ${LINE_Y} H${WIDTH - 8}`} />
    <path class="strip-zero" d=${`M${zero} ${LINE_Y - 12} v24`} />
    ${ends && html`<path class="strip-interval" d=${`M${ends[0]} ${LINE_Y - 6} v12 M${ends[0]} ${LINE_Y} H${ends[1]} M${ends[1]} ${LINE_Y - 6} v12`} />`}
    <path class="strip-mark" d=${`M${mark} ${LINE_Y - 9} l9 9 l-9 9 l-9 -9 z`} />
    <text class="strip-figure" x=${mark} y="20" text-anchor=${anchor}>${words}</text>
    <text class="strip-words" x="8" y="70">exo</text>
    <text class="strip-words" x=${low} y="70" text-anchor="middle">10</text>
    <text class="strip-words" x=${zero} y="70" text-anchor="middle">straight</text>
    <text class="strip-words" x=${high} y="70" text-anchor="middle">10</text>
    <text class="strip-words" x=${WIDTH - 8} y="70" text-anchor="end">eso</text>
  </svg>`;
}
