/** The way to what this clinic does otherwise in theatre. */
import { html } from '../../vendor/preact.js';

export function TheatrePractice() {
  return html`<section class="stack" lang="en" dir="ltr" aria-labelledby="theatre-practice">
    <h2 id="theatre-practice">Theatre set-up, lists and kit</h2>
    <p class="soft">Common practice of the trade, with this clinic's own in its place.</p>
    <div class="buttons"><a class="button" href="#/practice">This clinic's practice</a></div>
  </section>`;
}
