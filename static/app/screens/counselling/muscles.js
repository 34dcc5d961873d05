/**
 * What is planned: the picture, which is never mirrored, and a line for each of its numbers. The surgeon's own line stands under
 * each in English whatever the language, so that a side or an amount can be held against the plan by anybody.
 */
import { Picture } from '../../parts/picture/picture.js';
import { html } from '../../vendor/preact.js';
import { Told } from './told.js';

/** @param {{page: any, speaker: import('../../words/speaker.js').Speaker, both: boolean}} props */
export function Muscles({ page, speaker, both }) {
  const { say } = speaker;
  return html`<section class="counsel-plan stack" aria-label=${say('What is planned')}>
    <h2>${say('What is planned')}</h2>
    <figure class="counsel-picture">
      <${Picture} picture=${inWordsOf(speaker, page)} />
      <figcaption class="small"><${Told} said=${page.picture_words} speaker=${speaker} both=${both} /></figcaption>
    </figure>
    <ol class="counsel-muscles">
      ${page.muscles.map(
        (/** @type {any} */ each) => html`<li key=${each.number}>
          <span class="counsel-number" aria-hidden="true">${each.number}</span>
          <div>
            <p><strong class="side">${speaker.said(each.eye_words)}</strong></p>
            <p>${lineOf(speaker, each)}</p>
            <p class="counsel-english" lang="en" dir="ltr">${each.trade}</p>
          </div>
        </li>`,
      )}
    </ol>
  </section>`;
}

/** "the muscle on the side of the nose: is moved back ...". @param {import('../../words/speaker.js').Speaker} speaker @param {any} each */
function lineOf({ say, said }, { muscle, done }) {
  return say('{muscle}: {done}', { muscle: said(muscle), done: done.map(said).join('; ') });
}

/**
 * The picture with its labels in the reader's language; places stay as the engine gave them.
 *
 * @param {import('../../words/speaker.js').Speaker} speaker
 * @param {any} page
 */
export function inWordsOf(speaker, page) {
  const marks = page.picture.marks.map((/** @type {any} */ mark) => ('words' in mark ? { ...mark, words: speaker.say(mark.words) } : mark));
  const spoken = page.muscles.map((/** @type {any} */ each) => `${speaker.said(each.eye_words)}, ${lineOf(speaker, each)}`);
  return { ...page.picture, marks, spoken: [speaker.said(page.picture_words), ...spoken].join(' ') };
}
