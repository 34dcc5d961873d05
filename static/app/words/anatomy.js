/** The trade's words for eyes, muscles and operations: a side is always written out. */

/** @typedef {'right' | 'left'} Eye */
/** @typedef {'MR' | 'LR' | 'SR' | 'IR' | 'SO' | 'IO'} Muscle */
/** @typedef {'recess' | 'resect' | 'weaken' | 'anteriorise' | 'transpose' | 'harada-ito' | 'tuck'} Operation */
/** @typedef {'up' | 'down'} Way where a tendon is moved to, across its pull */
/** @typedef {{direction: Way, width: 'half tendon' | 'full tendon', mm: number}} Offset */
/** @typedef {{eye: Eye, muscle: Muscle, operation: Operation, offset?: Offset | Way | null}} Work of an option, or as it was drawn */

/** @type {Eye[]} */
export const EYES = ['right', 'left'];

/** @type {Record<Eye, string>} */
export const EYE_WORDS = { right: 'RIGHT eye', left: 'LEFT eye' };

/** @type {Record<Muscle, string>} */
export const MUSCLE_WORDS = {
  MR: 'medial rectus',
  LR: 'lateral rectus',
  SR: 'superior rectus',
  IR: 'inferior rectus',
  SO: 'superior oblique',
  IO: 'inferior oblique',
};

/** @type {Muscle[]} */
export const MUSCLES = ['MR', 'LR', 'SR', 'IR', 'SO', 'IO'];

/** @type {Operation[]} */
export const OPERATIONS = ['recess', 'resect', 'weaken', 'anteriorise', 'transpose', 'harada-ito', 'tuck'];

/** What may be said of a muscle when a plan is drawn again: everything that the engine plans on it, and more. */
const RECTUS_OPERATIONS = /** @type {Operation[]} */ (['recess', 'resect', 'transpose', 'tuck']);
const OBLIQUE_OPERATIONS = /** @type {Operation[]} */ (['recess', 'weaken', 'anteriorise', 'tuck', 'harada-ito', 'resect']);

/** @param {Muscle} muscle */
const isOblique = (muscle) => muscle === 'SO' || muscle === 'IO';

/** @param {Muscle} muscle @returns {Operation[]} */
export const operationsOn = (muscle) => (isOblique(muscle) ? OBLIQUE_OPERATIONS : RECTUS_OPERATIONS);

/** Only a horizontal rectus is moved up or down across its pull. @param {Muscle} muscle */
export const mayBeOffset = (muscle) => muscle === 'MR' || muscle === 'LR';

/** "recess", "Harada-Ito". @param {string} operation */
export const operationWords = (operation) => (operation === 'harada-ito' ? 'Harada-Ito' : operation);

/** Where the tendon is moved to, or null. @param {{offset?: Offset | Way | null}} work @returns {Way | null} */
export const wayOf = ({ offset }) => (typeof offset === 'string' ? offset : (offset?.direction ?? null));

/** "recess, tendon moved up". @param {{operation: string, offset?: Offset | Way | null}} work */
export function doneWords(work) {
  const way = wayOf(work);
  return operationWords(work.operation) + (way ? `, tendon moved ${way}` : '');
}

/**
 * "RIGHT eye, medial rectus".
 * @param {{eye: Eye, muscle: Muscle}} place
 */
export const placeWords = ({ eye, muscle }) => `${EYE_WORDS[eye]}, ${MUSCLE_WORDS[muscle]}`;

/**
 * "RIGHT eye, medial rectus: recess, tendon moved up".
 * @param {Work} work
 */
export const workWords = (work) => `${placeWords(work)}: ${doneWords(work)}`;
