/**
 * Calendar dates (`YYYY-MM-DD`, no time, no zone) in words with the month spelt, so that no reader swaps day and month.
 */

export const MONTHS = [
  'January', 'February', 'March', 'April', 'May', 'June',
  'July', 'August', 'September', 'October', 'November', 'December',
];

/**
 * @param {string} iso `2019-03-04`
 * @returns {{year: number, month: number, day: number} | null} null when there is no such day
 */
export function dateParts(iso) {
  const found = /^(\d{4})-(\d\d)-(\d\d)$/.exec(iso ?? '');
  if (!found) return null;
  const [year, month, day] = found.slice(1).map(Number);
  if (month < 1 || month > 12 || day < 1 || day > daysIn(year, month)) return null;
  return { year, month, day };
}

/** @returns {number} how many days the month has; `month` counts from 1 */
export function daysIn(year, month) {
  return new Date(Date.UTC(year, month, 0)).getUTCDate();
}

/** @returns {string} `4 March 2019`, or the text itself when it is no date */
export function dateWords(iso) {
  const date = dateParts(iso);
  return date ? `${date.day} ${MONTHS[date.month - 1]} ${date.year}` : String(iso ?? '');
}

/** @returns {string} `4 Mar 2019`, for a narrow place */
export function shortDateWords(iso) {
  const date = dateParts(iso);
  return date ? `${date.day} ${MONTHS[date.month - 1].slice(0, 3)} ${date.year}` : String(iso ?? '');
}

/** @returns {string} the calendar date at this place, `YYYY-MM-DD` */
export function today(now = new Date()) {
  const two = (number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
