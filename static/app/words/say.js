/**
 * The app's words in the language of whoever holds the phone.
 *
 *     say('Back')                                       the text's key is its English
 *     say('Needs attention: {count}', { count })
 *     sayCount('{count} day', '{count} days', days)     plural forms as gettext has them
 *     marked('Planned')                                 a text that is said later, by `said`
 *     sayHere('Caution')                                for parts that clinical screens have, too
 *
 * The first arguments are literals: `manage.py catalogues` collects them from the sources. What is said is read when a component
 * draws itself; the app is drawn anew when the language changes.
 *
 * A screen whose words were taken up has `spoken` in `screens/index.js`. Every other is English, from left to right, whatever was
 * chosen, but for the frame's bar: a side or a dose that is translated wrongly hurts a person, and a gaze map must not turn round.
 * The patient's language is another one: `screens/counselling/reading.js`.
 */
import { observable } from '../observable.js';
import { catalogueOf, isLanguage } from './languages.js';
import { speakerOf } from './speaker.js';

/** @typedef {import('./languages.js').Code} Code */

const KEY = 'language';
const english = speakerOf(null);

let speaker = english;
let isSpokenHere = true;

/** The language that the app speaks now. @type {import('../observable.js').Observable<Code>} */
export const language = observable(/** @type {Code} */ ('en'));

/** Takes up the language that was chosen on this phone; English where its words are not there. */
export async function startLanguage() {
  const kept = globalThis.localStorage?.getItem(KEY);
  if (isLanguage(kept) && kept !== 'en') await speak(kept).catch((error) => console.error(error));
}

/** @param {Code} code */
export async function setLanguage(code) {
  await speak(code);
  localStorage.setItem(KEY, code);
}

/** @param {Code} code */
async function speak(code) {
  speaker = code === 'en' ? english : speakerOf(await catalogueOf(code));
  speakHere(isSpokenHere);
  language.set(code);
}

/** A screen comes up whose words were taken up, or one that is English. @param {boolean} isSpoken */
export function speakHere(isSpoken) {
  isSpokenHere = isSpoken;
  const { language: lang, direction: dir } = isSpoken ? speaker : english;
  Object.assign(document.documentElement, { lang, dir });
}

/** @type {import('./speaker.js').Speaker['say']} */
export const say = (text, values) => speaker.say(text, values);

/** @type {import('./speaker.js').Speaker['sayCount']} */
export const sayCount = (one, many, count, values) => speaker.sayCount(one, many, count, values);

/** @type {import('./speaker.js').Speaker['say']} */
export const sayHere = (text, values) => (isSpokenHere ? speaker : english).say(text, values);

/** A text that was `marked`, or that came from elsewhere and may have a translation. @param {string} text */
export const said = (text) => speaker.say(text);

/** The same for parts that clinical screens have, too. @param {string} text */
export const saidHere = (text) => (isSpokenHere ? speaker : english).say(text);

/** @param {string} text @returns {string} */
export const marked = (text) => text;

/** `lang` and `dir` of what speaks the chosen language on every screen. */
export const spokenIn = () => ({ lang: speaker.language, dir: speaker.direction });

/** Who has reviewed the app's present words; null where nobody has, and for English. */
export const reviewed = () => speaker.reviewed;
