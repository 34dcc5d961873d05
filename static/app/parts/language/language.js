/** A choice among the languages, each named as its readers write it, and whether a person has reviewed a translation. */
import { html } from '../../vendor/preact.js';
import { LANGUAGES } from '../../words/languages.js';
import { speakerOf } from '../../words/speaker.js';
import { Choice } from '../choice/choice.js';

/** @typedef {import('../../words/languages.js').Code} Code */

const english = speakerOf(null);
const OPTIONS = LANGUAGES.map(({ code, name, direction, english: hint }) => ({
  value: code,
  words: html`<span lang=${code} dir=${direction}>${name}</span>`,
  hint: name === hint ? undefined : html`<span lang="en" dir="ltr">${hint}</span>`,
}));

/** @param {{legend: string, name: string, value: Code, onChange: (code: Code) => void}} props */
export function LanguageChoice({ legend, name, value, onChange }) {
  return html`<${Choice} legend=${legend} name=${name} options=${OPTIONS} value=${value} onChange=${onChange} />`;
}

/**
 * Said in the language itself and in English, on the screen and on paper.
 * @param {{speaker: import('../../words/speaker.js').Speaker}} props
 */
export function ReviewMark({ speaker }) {
  if (speaker.language === 'en') return null;
  return html`<div class="review-mark">
    <p lang=${speaker.language} dir=${speaker.direction}>${reviewWords(speaker, speaker.reviewed)}</p>
    <p lang="en" dir="ltr">${reviewWords(english, speaker.reviewed)}</p>
  </div>`;
}

/**
 * @param {import('../../words/speaker.js').Speaker} speaker
 * @param {{by: string, on: string} | null} reviewed
 */
export function reviewWords({ say }, reviewed) {
  if (reviewed) return say('Translation reviewed by {by}, {on}.', reviewed);
  return say('This translation was made by a machine. No person has reviewed it yet: a word may be wrong.');
}
