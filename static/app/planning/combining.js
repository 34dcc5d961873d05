/** Options to be done at one sitting, as a list of ids: at most one of them answers the horizontal deviation. */

/** @typedef {{id: string, answers?: string}} Option */

/** Between the ids of the parts in the id of a combined option. */
const JOIN = '+';

/** @param {Option} option */
const isHorizontal = ({ answers = 'horizontal' }) => answers === 'horizontal';

/** What a combined option is made of; a plain one is made of itself. @param {string} id */
export const partsOf = (id) => id.split(JOIN);

/** @param {string} id */
export const isCombined = (id) => id.includes(JOIN);

/**
 * The list with an option taken in or out; a second one for the horizontal deviation takes the first one's place.
 * @param {string[]} combine
 * @param {Option} option
 * @param {Option[]} offered
 */
export function turned(combine, option, offered) {
  if (combine.includes(option.id)) return combine.filter((id) => id !== option.id);
  const others = combine.filter((id) => !(isHorizontal(option) && offered.some((other) => other.id === id && isHorizontal(other))));
  return [...others, option.id];
}

/**
 * Every option of a proposal that can be chosen.
 * @param {any} proposal
 * @returns {any[]}
 */
export const allOptions = ({ options, additions = [], combined = null }) => [...options, ...additions, ...(combined ? [combined] : [])];

/**
 * The option that a dose belongs to, where the surgeon's figure for it is set: a part of a combined one, or itself.
 * @param {any} proposal
 * @param {any} option
 * @param {{eye: string, muscle: string}} dose
 * @returns {string} id
 */
export function ownerOf(proposal, option, { eye, muscle }) {
  if (!isCombined(option.id)) return option.id;
  const parts = allOptions(proposal).filter(({ id }) => partsOf(option.id).includes(id));
  const owner = parts.find(({ doses }) => doses.some((/** @type {any} */ dose) => dose.eye === eye && dose.muscle === muscle && dose.mm !== null));
  return owner?.id ?? option.id;
}
