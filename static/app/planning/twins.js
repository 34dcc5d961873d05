/** Patients who may be one person who was entered twice, as the engine finds them: a suggestion, never a decision. */
import { heads } from '../store/heads.js';
import { rootOf, wereParted } from '../store/joined.js';

/** @typedef {import('../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {{first: string, second: string, likeness: keyof typeof LIKENESS_WORDS}} Pair */
/** @typedef {{other: string, likeness: Pair['likeness']}} Twin */

export const LIKENESS_WORDS = {
  same_number: 'Same hospital number.',
  similar_name_and_birth_date: 'Similar name, same birth date.',
  similar_name_and_exchanged_day_and_month: 'Similar name; the birth dates differ only in that day and month are exchanged.',
};

/**
 * @param {readonly LedgerRecord[]} records
 * @returns {{patients: {id: string, body: any}[]}} what the engine is asked: everybody by their present details
 */
export function question(records) {
  const seen = new Set();
  const patients = heads(records, 'patient').filter(({ patient }) => !seen.has(patient) && seen.add(patient));
  return { patients: patients.map(({ patient, body }) => ({ id: patient, body: told(body) })).sort((a, b) => (a.id < b.id ? -1 : 1)) };
}

/** What identifies; the rest of the details says nothing here. @param {any} body */
const told = ({ schema, full_name, born_on, hospital_number }) => ({ schema, full_name, born_on, hospital_number });

/**
 * @param {readonly LedgerRecord[]} records
 * @param {Pair[]} pairs
 * @param {(one: string, other: string) => boolean} areTwo whether somebody has said so on this phone
 * @returns {Map<string, Twin[]>} by patient; without those who are joined, and those whom people have said to be two
 */
export function twinsOf(records, pairs, areTwo) {
  /** @type {Map<string, Twin[]>} */
  const twins = new Map();
  const add = (/** @type {string} */ one, /** @type {Twin} */ twin) => twins.set(one, [...(twins.get(one) ?? []), twin]);
  for (const { first, second, likeness } of pairs) {
    const isSettled = rootOf(records, first) === rootOf(records, second) || wereParted(records, first, second) || areTwo(first, second);
    if (isSettled) continue;
    add(first, { other: second, likeness });
    add(second, { other: first, likeness });
  }
  return twins;
}

/** The name under which this phone keeps that two are two. @param {string} one @param {string} other */
export const apartName = (one, other) => `two people/${[one, other].sort().join('/')}`;
