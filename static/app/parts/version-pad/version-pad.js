/** How far each muscle over- or underacts: the grades from -4 to +4 for the muscle that is touched. */
import { html } from '../../vendor/preact.js';
import { MUSCLE_WORDS, placeWords } from '../../words/anatomy.js';
import { gradeWords } from '../../words/figures.js';
import { MuscleGrid } from '../muscle-grid/muscle-grid.js';
import { GRADES, gradeOf, withGrade } from './grades.js';

/** @typedef {import('./grades.js').Place} Place */

/**
 * @param {object} props
 * @param {import('./grades.js').Version[]} props.versions
 * @param {(versions: import('./grades.js').Version[]) => void} props.onChange
 */
export function VersionPad({ versions, onChange }) {
  /** @param {Place} place */
  const holdsOf = (place) => {
    const grade = gradeOf(versions, place);
    return grade === null ? { shown: '\u2013', said: 'not graded' } : { shown: gradeWords(grade), said: gradeWords(grade) };
  };
  /** @param {Place} place */
  const panelOf = (place) => html`<div role="group" aria-label=${`Grade of ${placeWords(place)}`}>
    <p class="version-scale"><span>underacts</span><strong>${MUSCLE_WORDS[place.muscle]}</strong><span>overacts</span></p>
    <div class="version-keys">
      ${GRADES.map((grade) => {
        const chosen = gradeOf(versions, place) === grade;
        return html`<button key=${grade} type="button" class="key" aria-pressed=${String(chosen)} onClick=${() => onChange(withGrade(versions, place, chosen ? null : grade))}>
          ${gradeWords(grade)}
        </button>`;
      })}
    </div>
  </div>`;
  return html`<${MuscleGrid} holdsOf=${holdsOf} panelOf=${panelOf} />`;
}
