/**
 * What each operation looks like on its muscle; the word beside it always says the same.
 *
 * Recess: the band starts further back, its old insertion stays as a broken line. Resect: a crossed-out piece at the front.
 * Weaken: the band is parted. Anteriorise: a new bar in front of the old insertion. Tuck: the band is doubled on itself.
 * Harada-Ito: its front half alone moves forward. Transpose: an arrow across the band says where to.
 */
import { html } from '../../vendor/preact.js';
import { END, INSERTION } from './brush.js';

/** @typedef {import('./brush.js').Brush} Brush */

const MOVED = INSERTION + 16;
const FORWARD = INSERTION - 5;

/** @type {Record<import('../../words/anatomy.js').Operation, (draw: Brush) => unknown>} */
export const OPERATION_DRAWINGS = {
  recess: (draw) => html`
    <path class="muscle-old" d=${draw.across(INSERTION, 2)} />
    <path class="muscle worked" d=${draw.band(MOVED, END)} />
    <path class="muscle-new" d=${draw.across(MOVED, 3)} />
    <path class="muscle-arrow" d=${draw.arrow(MOVED + 7, END - 8)} />
  `,
  resect: (draw) => html`
    <path class="muscle worked" d=${draw.band(INSERTION, END)} />
    <path class="muscle-out" d=${draw.piece(INSERTION, MOVED)} />
    <path class="muscle-hatch" d=${draw.hatch(INSERTION, MOVED)} />
    <path class="muscle-new" d=${`${draw.across(INSERTION, 3)} ${draw.across(MOVED, 3)}`} />
    <path class="muscle-arrow" d=${draw.arrow(END - 6, MOVED + 7)} />
  `,
  weaken: (draw) => html`
    <path class="muscle worked" d=${draw.piece(INSERTION, INSERTION + 18)} />
    <path class="muscle worked" d=${draw.band(INSERTION + 28, END)} />
    <path class="muscle-old" d=${`${draw.across(INSERTION + 18, 3)} ${draw.across(INSERTION + 28, 3)}`} />
  `,
  anteriorise: (draw) => html`
    <path class="muscle worked" d=${draw.band(FORWARD, END)} />
    <path class="muscle-old" d=${draw.across(INSERTION + 6, 2)} />
    <path class="muscle-new" d=${draw.across(FORWARD, 3)} />
    <path class="muscle-arrow" d=${draw.arrow(END - 6, INSERTION + 12)} />
  `,
  transpose: (draw) => html`
    <path class="muscle worked" d=${draw.band(INSERTION, END)} />
    <path class="muscle-new" d=${draw.across(INSERTION, 3)} />
  `,
  'harada-ito': (draw) => html`
    <path class="muscle worked" d=${draw.band(INSERTION, END)} />
    <path class="muscle-strip" d=${draw.strip(INSERTION, END - 10)} />
    <path class="muscle-arrow" d=${draw.arrow(END - 10, INSERTION + 6)} />
  `,
  tuck: (draw) => html`
    <path class="muscle worked" d=${draw.band(INSERTION, END)} />
    <path class="muscle-loop" d=${draw.loop(INSERTION + 14, INSERTION + 34)} />
    <path class="muscle-new" d=${`${draw.across(INSERTION + 14, 2)} ${draw.across(INSERTION + 34, 2)}`} />
  `,
};
