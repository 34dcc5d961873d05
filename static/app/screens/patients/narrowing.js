/** What the list is narrowed to; kept while the app is open, so that coming back from a patient finds the list as it was left. */
import { observable } from '../../observable.js';

/** So many rows are drawn at first; a longer list is narrowed by typing, or shown page by page. */
export const PAGE = 60;

/** @typedef {{typed: string, state: import('./progress.js').State | null, shown: number}} Narrowing */

export const narrowing = observable(/** @type {Narrowing} */ ({ typed: '', state: null, shown: PAGE }));
