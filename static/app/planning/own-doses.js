/** A suggestion that the surgeon takes: its figures become the surgeon's own, and the plan's note says where they come from. Pure. */
import { mmWords } from '../words/figures.js';
import { placeWords } from '../words/anatomy.js';
import { withChange, withoutOption } from './changes.js';
import { partsOf } from './combining.js';

/** @typedef {import('./case.js').Change} Change */
/** @typedef {{eye: import('../words/anatomy.js').Eye, muscle: import('../words/anatomy.js').Muscle, operation: string, proposed_mm: number, own_mm: number}} OwnDose */
/** @typedef {{option: string, doses: OwnDose[]}} Suggested */

/**
 * What is said of an option, or of the part of it that answers the horizontal deviation: at most one does.
 * @template {{option: string}} S
 * @param {readonly S[]} suggestions
 * @param {string} option
 * @returns {S | undefined}
 */
export const suggestionFor = (suggestions, option) => suggestions.find((each) => partsOf(option).includes(each.option));

/**
 * The figures of a suggestion as the surgeon's own; where it says the same as the table nothing is set.
 * @param {Change[]} changes
 * @param {Suggested} suggestion
 * @returns {Change[]}
 */
export const taken = (changes, { option, doses }) =>
  doses
    .filter(differs)
    .reduce((all, { eye, muscle, own_mm }) => withChange(all, { option, eye, muscle, mm: own_mm }), withoutOption(changes, option));

/** @param {Suggested} suggestion whether it says something else than the table for any muscle */
export const saysMore = ({ doses }) => doses.some(differs);

/**
 * Whether the surgeon's figures of the option are exactly those of the suggestion.
 * @param {Change[]} changes
 * @param {Suggested} suggestion
 */
export const isTaken = (changes, suggestion) =>
  saysMore(suggestion) && JSON.stringify(ofOption(changes, suggestion.option)) === JSON.stringify(ofOption(taken([], suggestion), suggestion.option));

/**
 * What the plan says of it: from how many cases, with what effect, and the table's figure beside each.
 * @param {Suggested} suggestion
 * @param {{cases: number, effect: {middle: number, low: number, high: number}}} calibration
 * @param {string} tableName
 */
export function ownNote(suggestion, { cases, effect }, tableName) {
  const [middle, low, high] = [effect.middle, effect.low, effect.high].map((ratio) => Math.round(100 * ratio));
  const figures = suggestion.doses.filter(differs).map((dose) => `${placeWords(dose)} ${mmWords(dose.own_mm)}, table ${mmWords(dose.proposed_mm)}`);
  return `Own results suggest what was set, by ${cases} cases at ${middle} % of the table (95 % interval ${low} to ${high} %): ${figures.join('; ')}. ${tableName}.`;
}

/** @param {OwnDose} dose */
function differs({ proposed_mm, own_mm }) {
  return own_mm !== proposed_mm;
}

/** @param {Change[]} changes @param {string} option */
const ofOption = (changes, option) => changes.filter((change) => change.option === option).map(({ eye, muscle, mm }) => ({ eye, muscle, mm }));
