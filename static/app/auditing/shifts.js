/** By how many days each person's dates are moved in a file for others: drawn here for that file, kept nowhere. */

/** What the engine takes, either way (planner/audit/export). */
const LEAST_DAYS = 30;
const MOST_DAYS = 364;
const CHOICES = 2 * (MOST_DAYS - LEAST_DAYS + 1);
/** The greatest multiple of CHOICES in 32 bits: what is drawn above it would make some shifts likelier than others. */
const FAIR = Math.floor(2 ** 32 / CHOICES) * CHOICES;

/**
 * @param {number} count
 * @param {(numbers: Uint32Array<ArrayBuffer>) => unknown} [fill] random numbers of this device
 * @returns {number[]}
 */
export function drawShifts(count, fill = (numbers) => crypto.getRandomValues(numbers)) {
  /** @type {number[]} */
  const drawn = [];
  const numbers = new Uint32Array(64);
  while (drawn.length < count) {
    fill(numbers);
    for (const number of numbers) if (number < FAIR && drawn.length < count) drawn.push(shiftOf(number % CHOICES));
  }
  return drawn;
}

/** @param {number} place */
function shiftOf(place) {
  const days = LEAST_DAYS + (place >> 1);
  return place % 2 === 0 ? days : -days;
}
