/** The check word, typed from the paper. It stands nowhere on this screen. */
import { Field } from '../../../parts/field/field.js';
import { html } from '../../../vendor/preact.js';

/** @param {{held: Record<string, any>, onHold: (held: Record<string, any>) => void}} props */
export function PaperEntry({ held, onHold }) {
  return html`<div class="check-typed check-word-typed">
    <${Field}
      label="Check word on the paper"
      name="check-word"
      value=${held.check_word ?? ''}
      onInput=${(/** @type {string} */ check_word) => onHold({ check_word: check_word.toUpperCase() })}
      input=${{ autocapitalize: 'characters', spellcheck: false }}
    />
  </div>`;
}
