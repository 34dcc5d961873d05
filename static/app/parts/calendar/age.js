/** How old a person is, in the unit a clinic uses at that age: days, weeks, months, then years. */
import { dateParts } from './date.js';

/**
 * Full months from one date to another. A month is full on the same day number, or on the last day of a shorter month.
 *
 * @param {string} from `YYYY-MM-DD`
 * @param {string} to `YYYY-MM-DD`, not before `from`
 * @returns {number | null} null when one of them is no date or `to` is before `from`
 */
export function fullMonths(from, to) {
  const [start, end] = [dateParts(from), dateParts(to)];
  if (!start || !end || to < from) return null;
  const months = (end.year - start.year) * 12 + end.month - start.month;
  const lastDay = new Date(Date.UTC(end.year, end.month, 0)).getUTCDate();
  return end.day < Math.min(start.day, lastDay) ? months - 1 : months;
}

/**
 * @param {string} bornOn `YYYY-MM-DD`
 * @param {string} on the date at which the age is wanted
 * @returns {string} `12 days`, `9 weeks`, `14 months`, `6 years`; an empty text when there is no age to tell
 */
export function ageWords(bornOn, on) {
  const months = fullMonths(bornOn, on);
  if (months === null) return '';
  const days = Math.round((Date.parse(on) - Date.parse(bornOn)) / 86_400_000);
  if (days < 28) return count(days, 'day');
  if (months < 3) return count(Math.floor(days / 7), 'week');
  if (months < 24) return count(months, 'month');
  return count(Math.floor(months / 12), 'year');
}

function count(number, unit) {
  return `${number} ${unit}${number === 1 ? '' : 's'}`;
}
