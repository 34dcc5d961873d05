/** Whether a patient is meant by what was typed: parts of the name, the number or the birth date, in any order. */
import { dateParts, MONTHS } from '../../parts/calendar/date.js';

/**
 * @param {{full_name: string, born_on: string, hospital_number: string}} patient
 * @param {string} typed
 * @returns {boolean} true when every word that was typed fits; nothing typed fits everyone
 */
export function matches(patient, typed) {
  const words = plain(typed).split(/\s+/).filter(Boolean);
  const name = plain(patient.full_name);
  const number = plain(patient.hospital_number).replace(/[^a-z0-9]/g, '');
  return words.every(
    (word) =>
      beginsAPart(name, word) ||
      (/[a-z0-9]/.test(word) && number.includes(word.replace(/[^a-z0-9]/g, ''))) ||
      fitsDate(patient.born_on, word),
  );
}

/**
 * @param {string} text
 * @returns {string} lower case, without accents, so that "Muller" finds "Müller"
 */
function plain(text) {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();
}

/** Whether a name, or any part of it after a space, a hyphen or an apostrophe, begins so. @param {string} name @param {string} word */
function beginsAPart(name, word) {
  return [...name.matchAll(/(?:^|[\s'’-])(?=\S)/g)].some(({ index, 0: mark }) => name.startsWith(word, index + mark.length));
}

/**
 * `2019`, `2019-03`, `4.3.2019`, `04/03/2019`, `mar`; day before month where the year comes last.
 *
 * @param {string} iso
 * @param {string} word
 */
function fitsDate(iso, word) {
  const date = dateParts(iso);
  if (!date) return false;
  if (/^[a-z]{3,}$/.test(word)) return MONTHS[date.month - 1].toLowerCase().startsWith(word);
  if (iso.startsWith(word)) return /^\d{4}/.test(word);
  const typed = word.split(/[./-]/);
  if (typed.length < 2 || !/\d/.test(word) || typed.some((part) => !/^\d*$/.test(part))) return false;
  const parts = [date.day, date.month, date.year];
  return typed.every((part, index) => (index < 2 ? Number(part) === parts[index] || part === '' : `${date.year}`.startsWith(part)));
}
