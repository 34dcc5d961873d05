/** Some sentences with where they come from, and a hundred small figures where there is a number to show. */
import { html } from '../../vendor/preact.js';
import { IconArray } from './icon-array.js';
import { Told } from './told.js';

/** @param {{passage: any, speaker: import('../../words/speaker.js').Speaker, both: boolean}} props a `Passage` of the engine */
export function Passage({ passage, speaker, both }) {
  const heading = speaker.said(passage.heading);
  const { mark, source } = passage.origin;
  return html`<section class=${`counsel-passage counsel-${passage.code}`} aria-label=${heading}>
    <div class="stack tight">
      <h3>${heading}</h3>
      ${passage.headline && html`<${Told} said=${passage.headline} speaker=${speaker} both=${both} strong=${true} />`}
      ${passage.sentences.map((/** @type {any} */ said) => html`<${Told} key=${said.text} said=${said} speaker=${speaker} both=${both} />`)}
      <p class="counsel-origin"><span class=${mark.text === 'from memory, verify' ? 'unsure' : ''}>${speaker.said(mark)}</span> <span lang="en" dir="ltr">${source}</span></p>
    </div>
    ${passage.array && html`<${IconArray} array=${passage.array} speaker=${speaker} />`}
  </section>`;
}
