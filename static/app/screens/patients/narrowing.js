/** What the list is narrowed to; kept while the app is open, so that coming back from a patient finds the list as it was left. */
import { observable } from '../../observable.js';

/** So many rows are drawn at first; a longer list is narrowed by typing, or shown page by page. */
export const PAGE = 60;

/** @type {import('../../observable.js').Observable<{typed: string, state: import('./progress.js').State | null, shown: number}>} */
export const narrowing = observable({ typed: '', state: null, shown: PAGE });
