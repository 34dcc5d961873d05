/** What the engine is asked for a file without identifiers. Pure but for the shifts, which are handed in. */

/** @typedef {import('./use-results.js').Counted} Counted */

/**
 * @param {Counted[]} counted
 * @param {(count: number) => number[]} draw one shift for each person
 */
export function exportQuestion(counted, draw) {
  const people = new Map([...new Set(counted.map(({ person }) => person))].map((person, place) => [person, place]));
  return {
    cases: counted.map(({ result, person, bornOn }) => ({ result, person: people.get(person), born_on: bornOn })),
    shifts_days: draw(people.size),
  };
}
