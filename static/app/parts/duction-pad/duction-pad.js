/** How far each eye falls short in the field of a muscle, and what moving it by hand there meets. */
import { html } from '../../vendor/preact.js';
import { MUSCLE_WORDS, placeWords } from '../../words/anatomy.js';
import { MuscleGrid } from '../muscle-grid/muscle-grid.js';
import { LIMITATIONS, PULLS, entryOf, limitationWords, withEntry } from './ductions.js';

/** @typedef {import('./ductions.js').Place} Place */
/** @typedef {import('./ductions.js').Duction} Duction */
/** @typedef {import('./ductions.js').ForcedDuction} ForcedDuction */

/**
 * @param {object} props
 * @param {Duction[]} props.ductions
 * @param {ForcedDuction[]} props.forced
 * @param {(ductions: Duction[]) => void} props.onDuctions
 * @param {(forced: ForcedDuction[]) => void} props.onForced
 */
export function DuctionPad({ ductions, forced, onDuctions, onForced }) {
  /** @param {Place} place */
  const holdsOf = (place) => {
    const grade = entryOf(ductions, place)?.grade;
    const result = entryOf(forced, place)?.result;
    const told = [...(grade === undefined ? [] : [limitationWords(grade)]), ...(result ? [result] : [])].join(', ');
    return { shown: told || '\u2013', said: told || 'not tested' };
  };
  /** @param {Place} place */
  const panelOf = (place) => {
    const grade = entryOf(ductions, place)?.grade;
    const result = entryOf(forced, place)?.result;
    return html`<div class="duction-panel">
      <p class="duction-title"><strong>${MUSCLE_WORDS[place.muscle]}</strong>: movement into its field</p>
      <div class="duction-keys" role="group" aria-label=${`Duction, ${placeWords(place)}`}>
        ${LIMITATIONS.map(
          (each) => html`<button key=${each} type="button" class="key" aria-pressed=${String(each === grade)} onClick=${() => onDuctions(withEntry(ductions, place, each === grade ? null : { grade: each }))}>
            ${limitationWords(each)}
          </button>`,
        )}
      </div>
      <p class="duction-title">Forced duction, into the same field</p>
      <div class="duction-keys duction-forced" role="group" aria-label=${`Forced duction, ${placeWords(place)}`}>
        ${PULLS.map(
          (each) => html`<button key=${each} type="button" class="key" aria-pressed=${String(each === result)} onClick=${() => onForced(withEntry(forced, place, each === result ? null : { result: each }))}>
            ${each}
          </button>`,
        )}
      </div>
    </div>`;
  };
  return html`<${MuscleGrid} holdsOf=${holdsOf} panelOf=${panelOf} />`;
}
