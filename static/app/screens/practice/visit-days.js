/** The days of the usual visits after an operation, as they are typed and read. Pure. */

/** @typedef {{name: string, first_day: number, last_day: number}} UsualVisit */

/** How much later a visit begins that is added, and how long it lasts. */
const LATER_DAYS = 90;
const LASTS_DAYS = 14;

/** @param {UsualVisit} visit */
export const daysWords = ({ first_day, last_day }) => (first_day === last_day ? `day ${first_day}` : `day ${first_day} to ${last_day}`);

/** What was typed as a day; 0, which the engine refuses with what is allowed, where it is none. @param {string} typed */
export const typedDay = (typed) => Math.trunc(Number(typed)) || 0;

/** One more, without a name, after the last of them. @param {readonly UsualVisit[]} visits @returns {UsualVisit} */
export function afterLast(visits) {
  const first_day = Math.max(0, ...visits.map(({ last_day }) => last_day)) + LATER_DAYS;
  return { name: '', first_day, last_day: first_day + LASTS_DAYS };
}
