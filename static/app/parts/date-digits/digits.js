/** Day, month and year as typed, to and from a calendar date. */

/**
 * @param {{day: string, month: string, year: string}} typed digits only
 * @returns {string} `YYYY-MM-DD` with what has been typed; empty when nothing has. An unfinished date stays recognisably unfinished
 */
export function isoOf({ day, month, year }) {
  if (!day && !month && !year) return '';
  const two = (text) => (text === '' ? '' : text.padStart(2, '0'));
  return `${year}-${two(month)}-${two(day)}`;
}

/**
 * @param {string} iso a date, or the unfinished text of {@link isoOf}
 * @returns {{day: string, month: string, year: string}}
 */
export function digitsOf(iso) {
  const [year = '', month = '', day = ''] = (iso ?? '').split('-');
  return { day: day.replace(/^0(?=\d)/, ''), month: month.replace(/^0(?=\d)/, ''), year };
}
