/** The one way in which a card that must not be used says so: a full-width slab above everything, in words. */
import { html } from '../../vendor/preact.js';

/** @param {{word: string, children?: unknown}} props */
export function VoidBand({ word, children }) {
  return html`<div class="void-band" role="alert">
    <p class="void-words">${word}</p>
    <p class="void-order">Do not operate by this card.</p>
    ${children}
  </div>`;
}
