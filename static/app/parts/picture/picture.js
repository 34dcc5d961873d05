/**
 * A picture that the engine drew, as it is: nothing is computed here but the places that the engine gave.
 *
 * Strokes, discs and labels are told apart by their fields. Fills are a page, a light tone and ink; a quiet stroke is thinner in tone.
 */
import { html } from '../../vendor/preact.js';

/** @typedef {{points: [number, number][], weight_mm: number, closed: boolean, dashed: boolean, quiet: boolean, fill: string}} Stroke */
/** @typedef {{x: number, y: number, radius_mm: number, weight_mm: number, fill: string}} Disc */
/** @typedef {{x: number, y: number, words: string, size_mm: number, anchor: string, bold: boolean, clear: boolean}} Label */
/** @typedef {{view: string, title: string, spoken: string, width_mm: number, height_mm: number, marks: (Stroke | Disc | Label)[]}} PictureFacts */

/** From the middle of a label's height down to its baseline, as a part of its size. */
const BASELINE = 0.36;

/** @param {{picture: PictureFacts}} props */
export function Picture({ picture }) {
  return html`<svg class="picture" viewBox=${`0 0 ${picture.width_mm} ${picture.height_mm}`} role="img" aria-label=${picture.spoken}>
    ${picture.marks.map((mark, number) => drawn(mark, number))}
  </svg>`;
}

/** @param {Stroke | Disc | Label} mark @param {number} key */
function drawn(mark, key) {
  if ('points' in mark) return stroke(mark, key);
  if ('radius_mm' in mark) {
    return html`<circle key=${key} class=${`picture-line picture-${mark.fill}`} cx=${mark.x} cy=${mark.y} r=${mark.radius_mm} stroke-width=${mark.weight_mm} />`;
  }
  const look = ['picture-words', ...(mark.bold ? ['picture-bold'] : []), ...(mark.clear ? ['picture-clear'] : [])].join(' ');
  return html`<text key=${key} class=${look} x=${mark.x} y=${mark.y + mark.size_mm * BASELINE} font-size=${mark.size_mm} text-anchor=${mark.anchor}>${mark.words}</text>`;
}

/** @param {Stroke} mark @param {number} key */
function stroke(mark, key) {
  const points = mark.points.map((point) => point.join(',')).join(' ');
  const look = `picture-line picture-${mark.fill}${mark.quiet ? ' picture-quiet' : ''}`;
  const dash = mark.dashed ? `${mark.weight_mm * 2} ${mark.weight_mm * 1.4}` : undefined;
  return mark.closed
    ? html`<polygon key=${key} class=${look} points=${points} stroke-width=${mark.weight_mm} stroke-dasharray=${dash} />`
    : html`<polyline key=${key} class=${look} points=${points} stroke-width=${mark.weight_mm} stroke-dasharray=${dash} />`;
}
