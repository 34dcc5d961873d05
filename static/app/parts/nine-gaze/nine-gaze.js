/**
 * The deviation in each gaze drawn to one scale, with its figures in words: as measured, and as expected after an operation
 * where that is given. The gazes lie as on the gaze map, and from where it is seen stands below.
 */
import { useObservable } from '../../observable.js';
import { html } from '../../vendor/preact.js';
import { GAZE_WORDS } from '../../words/reading.js';
import { ORIENTATION_WORDS, edgeWords, mapRows, tiltRow } from '../gaze-map/gazes.js';
import { orientation, setOrientation } from '../gaze-map/orientation.js';
import { GazeDrawing } from './gaze-drawing.js';
import { reachOf } from './scale.js';

/** @typedef {import('./scale.js').Place} Place */

/** @param {{places: Place[], label: string}} props `label`: what is shown, with its range and correction */
export function NineGaze({ places, label }) {
  const seen = useObservable(orientation);
  const reach_pd = reachOf(places);
  const [leftWords, rightWords] = edgeWords(seen);
  const other = seen === 'facing' ? 'through' : 'facing';
  const hasAfter = places.some(({ after }) => after);
  /** @param {string} gaze */
  const cell = (gaze) => {
    const place = places.find((each) => each.gaze === gaze);
    return html`<li key=${gaze} class=${place ? 'nine-cell' : 'nine-cell nine-empty'}>
      <span class="nine-name">${GAZE_WORDS[gaze]}</span>
      ${place ? html`<${GazeDrawing} place=${place} reach_pd=${reach_pd} />` : html`<span class="small soft">not measured</span>`}
    </li>`;
  };
  const tilts = tiltRow(seen).filter((gaze) => places.some((place) => place.gaze === gaze));
  return html`<figure class="nine-gaze" aria-label=${label}>
    <p class="nine-edges"><span>${leftWords}</span><span>${rightWords}</span></p>
    <ul class="nine-grid">${mapRows(seen).flat().map(cell)}</ul>
    ${tilts.length > 0 && html`<ul class="nine-grid nine-tilts">${tilts.map(cell)}</ul>`}
    <figcaption class="nine-caption">
      <span><strong>${label}.</strong> Each drawing reaches ${reach_pd} Δ to both sides: exo to the left, eso to the right, right hyper up. The band is 10 Δ to each side of straight.</span>
      ${hasAfter && html`<span>Filled: before. Open, with its 95 % interval: expected after.</span>`}
      <span>${ORIENTATION_WORDS[seen]}. <button type="button" class="nine-turn" onClick=${() => setOrientation(other)}>${other === 'facing' ? 'See it facing the patient' : "See it through the patient's eyes"}</button></span>
    </figcaption>
  </figure>`;
}
