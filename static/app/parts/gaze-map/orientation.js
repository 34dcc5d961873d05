/** From where the surgeon wants to see the gaze map; remembered on this device (it says nothing of any patient). */
import { observable } from '../../observable.js';

/** @typedef {import('./gazes.js').Orientation} Orientation */

const KEY = 'gaze-map orientation';

/** @type {import('../../observable.js').Observable<Orientation>} */
export const orientation = observable(/** @type {Orientation} */ (globalThis.localStorage?.getItem(KEY) === 'through' ? 'through' : 'facing'));

/** @param {Orientation} choice */
export function setOrientation(choice) {
  localStorage.setItem(KEY, choice);
  orientation.set(choice);
}
