/** What a set-up, a day's list or a clinic's practice says, field by field in words, so that two versions can be compared. */
import { shortDateWords } from '../../parts/calendar/date.js';

const WISHES = {
  adjustable: 'Adjustable suture wished',
  cooperation: 'Keeps still while awake',
  avoid_general: 'General anaesthesia to be avoided',
  sedation_team: 'Sedation and team at hand',
  lost_muscle: 'Muscle thought to have slipped',
  block_at: 'Local block at',
};

/** @typedef {{field: string, words: string, value: string}} Fact */

/** @param {any} body @returns {Fact[]} */
export function preparedFacts(body) {
  return [
    ...(body.on ? [{ field: 'on', words: 'Day', value: shortDateWords(body.on) }] : []),
    ...plain(body, { team: 'Team', place: 'Place', starts_at: 'First operation at', decided_by: 'Decided by', reason: 'Reason' }),
    ...plain(body.wishes ?? {}, WISHES),
    ...(body.overrides ?? []).map((/** @type {any} */ own) => ({ field: `own ${own.item}`, words: own.item, value: `${spaced(own.choice)}: ${own.reason}` })),
    ...(body.choices ?? []).map((/** @type {any} */ own) => ({ field: `usual ${own.item}`, words: own.item, value: [own.choice && spaced(own.choice), own.words].filter(Boolean).join(': ') })),
    ...(body.figures ?? []).map((/** @type {any} */ own) => ({ field: own.name, words: spaced(own.name), value: String(own.value) })),
    ...(body.entries ?? []).map((/** @type {any} */ entry, /** @type {number} */ index) => ({
      field: `entry ${index}`,
      words: `Place ${index + 1}`,
      value: [entry.plan_id, `${entry.duration_min} min`, entry.note].filter(Boolean).join(', '),
    })),
  ];
}

/** @param {any} body @param {Record<string, string>} names @returns {Fact[]} */
const plain = (body, names) =>
  Object.entries(names)
    .filter(([field]) => body[field] !== undefined && body[field] !== null && body[field] !== '')
    .map(([field, words]) => ({ field, words, value: yesNo(body[field]) }));

/** @param {unknown} value */
const yesNo = (value) => (value === true ? 'yes' : value === false ? 'no' : String(value));

/** @param {string} name */
const spaced = (name) => name.replaceAll('_', ' ');
