/** The words of a hand-over file, large enough to be read aloud from them. */
import { html } from '../../vendor/preact.js';

/** @param {{words: string[]}} props */
export function WordsShown({ words }) {
  return html`<ol class="hand-words">
    ${words.map((word, index) => html`<li key=${index}>${word}</li>`)}
  </ol>`;
}
