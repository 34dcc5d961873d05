/**
 * The nine gazes as a 3x3 grid with the primary position largest, and the two head tilts under it.
 *
 * Whose right is meant stands in words at its edges, and from where it is seen stands below. Arrow keys move as the
 * picture lies (gazes.js).
 */
import { useObservable } from '../../observable.js';
import { html, useRef, useState } from '../../vendor/preact.js';
import { GAZE_WORDS } from '../../words/reading.js';
import { ORIENTATION_WORDS, edgeWords, mapRows, neighbour, tiltRow } from './gazes.js';
import { orientation, setOrientation } from './orientation.js';

/**
 * @param {object} props
 * @param {(gaze: string) => {axis: string, text: string}[]} props.linesOf what was read there, for the range in view
 * @param {string} props.conditions read out with each place, e.g. "distance, with correction"
 * @param {string | null} props.open the place whose pad is open
 * @param {string | null} props.offered the place that comes next
 * @param {boolean} props.compact a pad needs the room
 * @param {(gaze: string) => void} props.onOpen
 */
export function GazeMap({ linesOf, conditions, open, offered, compact, onOpen }) {
  const seen = useObservable(orientation);
  const [reach, setReach] = useState('primary');
  const grid = useRef(/** @type {HTMLElement | null} */ (null));
  const [leftWords, rightWords] = edgeWords(seen);
  const other = seen === 'facing' ? 'through' : 'facing';

  /** @param {KeyboardEvent} event */
  const onKeyDown = (event) => {
    const next = neighbour(reach, event.key, seen);
    if (next === reach) return;
    event.preventDefault();
    setReach(next);
    /** @type {HTMLElement | null | undefined} */ (grid.current?.querySelector(`[data-gaze=${next}]`))?.focus();
  };

  /** @param {string} gaze */
  const place = (gaze) => {
    const lines = linesOf(gaze);
    const isNext = gaze === offered && gaze !== open;
    const shown = [GAZE_WORDS[gaze], ...lines.map((line) => line.text), ...(isNext ? ['next'] : [])].join(' ');
    return html`<button
      key=${gaze}
      type="button"
      class=${`gaze gaze-${gaze}`}
      data-gaze=${gaze}
      tabindex=${gaze === reach ? 0 : -1}
      aria-label=${`${shown}${lines.length ? '' : ', not measured'}, ${conditions}`}
      aria-current=${gaze === open ? 'true' : undefined}
      onFocus=${() => setReach(gaze)}
      onClick=${() => onOpen(gaze)}
    >
      <span class="gaze-name">${GAZE_WORDS[gaze]}</span>
      ${lines.map((line) => html`<span class=${`gaze-reading gaze-${line.axis}`} key=${line.axis}>${' '}${line.text}</span>`)}
      ${isNext && html`<span class="gaze-next">${' '}next</span>`}
    </button>`;
  };

  return html`<div class=${`gaze-map${compact ? ' compact' : ''}`}>
    <div class="gaze-field" role="group" aria-label=${`Gaze map, ${ORIENTATION_WORDS[seen].toLowerCase()}`} ref=${grid} onKeyDown=${onKeyDown}>
      <span class="gaze-edge gaze-edge-left">${leftWords}</span>
      <div class="gaze-grid">${mapRows(seen).flat().map(place)}</div>
      <div class="gaze-tilts">${tiltRow(seen).map(place)}</div>
      <span class="gaze-edge gaze-edge-right">${rightWords}</span>
    </div>
    <div class="gaze-seen">
      <p><strong>${ORIENTATION_WORDS[seen]}</strong></p>
      <button type="button" class="button bare" onClick=${() => setOrientation(other)}>
        ${other === 'facing' ? 'See it facing the patient' : "See it through the patient's eyes"}
      </button>
    </div>
  </div>`;
}
