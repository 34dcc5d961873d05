/** Answers of equal weight; one that tells something is followed by what it is. */
import { Choice } from '../../../parts/choice/choice.js';
import { Field } from '../../../parts/field/field.js';
import { html } from '../../../vendor/preact.js';

/** @param {{step: any, held: Record<string, any>, onHold: (held: Record<string, any>) => void}} props */
export function AnswerEntry({ step, held, onHold }) {
  const chosen = step.answers.find((/** @type {any} */ answer) => answer.value === held.answer);
  return html`<div class="stack">
    <${Choice}
      legend=${`The answer to: ${step.aloud}`}
      quiet
      name="answer"
      options=${step.answers.map((/** @type {any} */ { value, words }) => ({ value, words }))}
      value=${held.answer}
      onChange=${(/** @type {string} */ answer) => onHold({ answer })}
    />
    ${chosen?.effect === 'tell' &&
    html`<${Field} label="What is it? Everybody must know it from here on." name="words" rows=${2} value=${held.words ?? ''} onInput=${(/** @type {string} */ words) => onHold({ ...held, words })} />`}
  </div>`;
}
