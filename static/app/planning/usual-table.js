/** The dose table that a new proposal starts from; remembered on this device. Null until a person has chosen: the engine's first. */
import { observable } from '../observable.js';

const KEY = 'usual table';

/** @type {import('../observable.js').Observable<string | null>} */
export const usualTable = observable(globalThis.localStorage?.getItem(KEY) ?? null);

/** @param {string} id */
export function setUsualTable(id) {
  localStorage.setItem(KEY, id);
  usualTable.set(id);
}
