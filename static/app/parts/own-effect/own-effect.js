/** What one's own operations do against what the table promises: the table as the upright line, the effect with its 95 % interval. */
import { html } from '../../vendor/preact.js';
import { EDGE, WIDTH, perCent, placeOf } from './scale.js';

const LINE_Y = 40;
const MARKED = [0.8, 1.25];

/** @param {{effect: {middle: number, low: number, high: number}}} props of the engine, the table has 1 */
export function OwnEffect({ effect }) {
  const [table, mark, low, high] = [1, effect.middle, effect.low, effect.high].map(placeOf);
  const words = `${perCent(effect.middle)} of what the table promises`;
  const anchor = mark < WIDTH / 3 ? 'start' : mark > (2 * WIDTH) / 3 ? 'end' : 'middle';
  return html`<svg class="own-effect" viewBox=${`0 0 ${WIDTH} 70`} role="img" aria-label=${`${words}, 95 % interval ${perCent(effect.low)} to ${perCent(effect.high)}. The table stands at 100 %.`}>
    <path class="own-effect-line" d=${`M${EDGE} ${LINE_Y} H${WIDTH - EDGE}`} />
    <path class="own-effect-table" d=${`M${table} ${LINE_Y - 14} v28`} />
    ${MARKED.map((value) => html`<path key=${value} class="own-effect-bound" d=${`M${placeOf(value)} ${LINE_Y - 8} v16`} />`)}
    <path class="own-effect-interval" d=${`M${low} ${LINE_Y - 6} v12 M${low} ${LINE_Y} H${high} M${high} ${LINE_Y - 6} v12`} />
    <path class="own-effect-mark" d=${`M${mark} ${LINE_Y - 9} l9 9 l-9 9 l-9 -9 z`} />
    <text class="own-effect-figure" x=${mark} y="18" text-anchor=${anchor}>yours ${perCent(effect.middle)}</text>
    <text class="own-effect-words" x=${placeOf(MARKED[0])} y="66" text-anchor="middle">${perCent(MARKED[0])}</text>
    <text class="own-effect-words" x=${table} y="66" text-anchor="middle">table</text>
    <text class="own-effect-words" x=${placeOf(MARKED[1])} y="66" text-anchor="middle">${perCent(MARKED[1])}</text>
  </svg>`;
}
