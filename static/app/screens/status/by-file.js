/** Work from device to device without the clinic. */
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';

export function ByFile() {
  return html`<section class="stack tight" aria-labelledby="by-file">
    <h2 id="by-file">${say('From device to device')}</h2>
    <p>${say('Where there is no network, a sealed file carries work to another device of the clinic.')}</p>
    <div class="buttons">
      <a class="button" href="#/hand-over">${say('Hand over')}</a>
      <a class="button" href="#/take-over">${say('Take over')}</a>
    </div>
  </section>`;
}
