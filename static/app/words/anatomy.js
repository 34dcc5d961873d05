/** The trade's words for eyes, muscles and operations: a side is always written out. */

/** @typedef {'right' | 'left'} Eye */
/** @typedef {'MR' | 'LR' | 'SR' | 'IR' | 'SO' | 'IO'} Muscle */
/** @typedef {'recess' | 'resect'} Operation */

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
export const OPERATIONS = ['recess', 'resect'];

/**
 * "RIGHT eye, medial rectus".
 * @param {{eye: Eye, muscle: Muscle}} place
 */
export const placeWords = ({ eye, muscle }) => `${EYE_WORDS[eye]}, ${MUSCLE_WORDS[muscle]}`;

/**
 * "RIGHT eye, medial rectus: recess".
 * @param {{eye: Eye, muscle: Muscle, operation: Operation}} work
 */
export const workWords = (work) => `${placeWords(work)}: ${work.operation}`;
