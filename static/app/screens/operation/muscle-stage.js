/** One muscle: what was planned, large; whether it was done so; and what was found and used. */
import { html } from '../../vendor/preact.js';
import { EYE_WORDS, MUSCLE_WORDS } from '../../words/anatomy.js';
import { workShort } from '../../words/operation.js';
import { Changed } from './changed.js';
import { Found } from './found.js';
import { asPlanned, differently, isDifferent, keyOf, tellMuscle, withoutMuscle } from './recording.js';
import { AddMuscle } from './stages.js';
import { Used } from './used.js';

/** @typedef {import('./recording.js').Recording} Recording */

/**
 * @param {object} props
 * @param {Recording} props.recording
 * @param {import('./recording.js').Muscle} props.muscle
 * @param {string[]} [props.forSclera] needles that the engine lets into sclera
 * @param {(next: Recording) => void} props.onKeep
 */
export function MuscleStage({ recording, muscle, forSclera, onKeep }) {
  const key = keyOf(muscle);
  const isOther = isDifferent(recording, muscle);
  /** @param {Partial<import('./recording.js').Muscle>} fields */
  const tell = (fields) => onKeep(tellMuscle(recording, key, fields));
  return html`<div class="stack">
    <div class="operation-planned">
      <p class="card-eye">${EYE_WORDS[muscle.eye]}</p>
      <p class="card-muscle">${MUSCLE_WORDS[muscle.muscle]}</p>
      <p class="operation-work"><span class="small soft">Planned</span> <strong>${muscle.planned ? workShort(muscle.planned) : 'not in the plan'}</strong></p>
      ${isOther && html`<p class="operation-work"><span class="small soft">Done</span> <strong>${workShort(muscle.done)}</strong></p>`}
    </div>
    <div class="buttons">
      ${!isOther && html`<button type="button" class="button" onClick=${() => onKeep(differently(recording, key))}>Something else was done</button>`}
      ${isOther && muscle.planned && html`<button type="button" class="button" onClick=${() => onKeep(asPlanned(recording, key))}>It was done as planned</button>`}
      ${!muscle.planned && html`<button type="button" class="button" onClick=${() => onKeep(withoutMuscle(recording, key))}>Take this muscle out again</button>`}
    </div>
    ${isOther && html`<${Changed} muscle=${muscle} onTell=${tell} />`}
    <${Found} muscle=${muscle} onTell=${tell} />
    <${Used} recording=${recording} muscle=${muscle} forSclera=${forSclera} onTell=${tell} />
    <div class="buttons"><${AddMuscle} recording=${recording} onKeep=${onKeep} /></div>
  </div>`;
}
