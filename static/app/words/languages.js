/**
 * The languages of the app. English is the language of its sources; every other has a catalogue in `clinic/locale`, which the
 * build puts beside this module, and which is fetched when the language is first asked for (the service worker holds them all).
 */

/** @typedef {'en' | 'fr' | 'ar'} Code */
/** @typedef {{code: Code, name: string, english: string, direction: 'ltr' | 'rtl'}} Language `name` as its readers write it */

/** @type {readonly Language[]} */
export const LANGUAGES = [
  { code: 'en', name: 'English', english: 'English', direction: 'ltr' },
  { code: 'fr', name: 'Français', english: 'French', direction: 'ltr' },
  { code: 'ar', name: 'العربيّة', english: 'Arabic', direction: 'rtl' },
];

/**
 * @typedef {object} Catalogue `clinic/locale/compiled.py` says how it is made
 * @property {Code} language
 * @property {'ltr' | 'rtl'} direction
 * @property {{by: string, on: string} | null} reviewed
 * @property {string} plural a digit for each number from 0 to 199
 * @property {Record<string, string | string[]>} texts
 */

/** @type {Map<Code, Promise<Catalogue>>} */
const fetched = new Map();

/**
 * @param {Code} code not English, which needs none
 * @returns {Promise<Catalogue>} asked for anew when it failed before
 */
export function catalogueOf(code) {
  const known = fetched.get(code);
  if (known) return known;
  const coming = fetchCatalogue(code);
  fetched.set(code, coming);
  coming.catch(() => fetched.delete(code));
  return coming;
}

/** @param {Code} code @returns {Promise<Catalogue>} */
async function fetchCatalogue(code) {
  const answer = await fetch(new URL(`catalogues/${code}.json`, import.meta.url));
  if (!answer.ok) throw new Error(`The words in ${code} are not there: ${answer.status}.`);
  return answer.json();
}

/** @param {unknown} code @returns {code is Code} */
export const isLanguage = (code) => LANGUAGES.some((language) => language.code === code);
