/** How far each muscle over- or underacts: the six muscles of an eye, and the grades from -4 to +4 for the one touched. */
import { html, useState } from '../../vendor/preact.js';
import { EYES, EYE_WORDS, MUSCLES, MUSCLE_WORDS, placeWords } from '../../words/anatomy.js';
import { gradeWords } from '../../words/figures.js';
import { GRADES, gradeOf, withGrade } from './grades.js';

/**
 * @param {object} props
 * @param {import('./grades.js').Version[]} props.versions
 * @param {(versions: import('./grades.js').Version[]) => void} props.onChange
 */
export function VersionPad({ versions, onChange }) {
  const [place, setPlace] = useState(/** @type {import('./grades.js').Place | null} */ (null));
  return html`<div class="version-pad">
    ${EYES.map((eye) => {
      const open = place?.eye === eye ? place : null;
      return html`<fieldset class="version-eye" key=${eye}>
        <legend class="side">${EYE_WORDS[eye]}</legend>
        <div class="version-muscles">
          ${MUSCLES.map((muscle) => {
            const grade = gradeOf(versions, { eye, muscle });
            return html`<button
              key=${muscle}
              type="button"
              class="version-muscle"
              aria-expanded=${String(open?.muscle === muscle)}
              aria-label=${`${placeWords({ eye, muscle })}: ${grade === null ? 'not graded' : gradeWords(grade)}`}
              onClick=${() => setPlace(open?.muscle === muscle ? null : { eye, muscle })}
            >
              <span class="version-name">${MUSCLE_WORDS[muscle]}</span>
              <strong class="version-grade">${grade === null ? '–' : gradeWords(grade)}</strong>
            </button>`;
          })}
        </div>
        ${open &&
        html`<div class="version-grades" role="group" aria-label=${`Grade of ${placeWords(open)}`}>
          <p class="version-scale"><span>underacts</span><strong>${MUSCLE_WORDS[open.muscle]}</strong><span>overacts</span></p>
          <div class="version-keys">
            ${GRADES.map((grade) => {
              const chosen = gradeOf(versions, open) === grade;
              return html`<button
                key=${grade}
                type="button"
                class="key"
                aria-pressed=${String(chosen)}
                onClick=${() => onChange(withGrade(versions, open, chosen ? null : grade))}
              >
                ${gradeWords(grade)}
              </button>`;
            })}
          </div>
        </div>`}
      </fieldset>`;
    })}
  </div>`;
}
