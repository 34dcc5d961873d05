/** Where one is in the record, and the way to every other page of it; a muscle that was spoken of says so. */
import { Mark } from '../../parts/mark/mark.js';
import { Sheet } from '../../parts/sheet/sheet.js';
import { html, useState } from '../../vendor/preact.js';
import { EYES, EYE_WORDS, MUSCLES, MUSCLE_WORDS, placeWords } from '../../words/anatomy.js';
import { AROUND, CHECK, COMPLICATIONS, keyOf, muscleOf, stagesOf, withMuscle } from './recording.js';

const WORDS = { [COMPLICATIONS]: 'Complications', [AROUND]: 'Anaesthesia, times', [CHECK]: 'Check and save' };

/** @param {{recording: import('./recording.js').Recording, card: string, onGo: (stage: string) => void}} props `card`: the way back to what was planned */
export function Stages({ recording, card, onGo }) {
  return html`<nav class="operation-stages" aria-label="Pages of the record">
    <ol>
      ${stagesOf(recording).map((stage) => {
        const muscle = muscleOf(recording, stage);
        const isSaid = recording.said.includes(stage);
        return html`<li key=${stage}>
          <button type="button" class="operation-stage" aria-current=${stage === recording.stage ? 'step' : undefined} onClick=${() => onGo(stage)}>
            <span>${muscle ? placeWords(muscle) : WORDS[stage]}</span>
            ${muscle && html`<span class="small soft">${isSaid ? html`<${Mark} name="done" />said` : 'not yet'}</span>`}
          </button>
        </li>`;
      })}
    </ol>
    <a class="button operation-to-card" href=${card}>What was planned: open the card</a>
  </nav>`;
}

/** A muscle that the plan does not name. @param {{recording: import('./recording.js').Recording, onKeep: (next: import('./recording.js').Recording) => void}} props */
export function AddMuscle({ recording, onKeep }) {
  const [isOpen, setOpen] = useState(false);
  const there = new Set(recording.body.muscles.map(keyOf));
  return html`<button type="button" class="button" aria-haspopup="dialog" onClick=${() => setOpen(true)}>Add a muscle</button>
    ${isOpen &&
    html`<${Sheet} open=${true} title="A muscle that the plan does not name" onClose=${() => setOpen(false)}>
      <div class="operation-add">
        ${EYES.map(
          (eye) => html`<section key=${eye} class="stack tight" aria-label=${EYE_WORDS[eye]}>
            <h3>${EYE_WORDS[eye]}</h3>
            ${MUSCLES.filter((muscle) => !there.has(keyOf({ eye, muscle }))).map(
              (muscle) => html`<button type="button" key=${muscle} class="button" onClick=${() => onKeep(withMuscle(recording, eye, muscle))}>${MUSCLE_WORDS[muscle]}</button>`,
            )}
          </section>`,
        )}
      </div>
    <//>`}`;
}
