/** The dose table that a new proposal starts from; remembered on this device (it says nothing of any patient). */
import { observable } from '../observable.js';

/** @typedef {{id: string, provenance: {mark: string}}} Table */

const KEY = 'usual table';

/** Id of the table that a person chose, null before. @type {import('../observable.js').Observable<string | null>} */
export const usualTable = observable(globalThis.localStorage?.getItem(KEY) ?? null);

/** @param {string} id */
export function setUsualTable(id) {
  localStorage.setItem(KEY, id);
  usualTable.set(id);
}

/**
 * The chosen one while the engine has it, else a published one before one from memory.
 *
 * @template {Table} T
 * @param {T[]} tables as the engine lists them
 * @param {string | null} chosen
 * @returns {T | undefined}
 */
export function startingTable(tables, chosen) {
  return tables.find(({ id }) => id === chosen) ?? tables.find(({ provenance }) => provenance.mark === 'published') ?? tables[0];
}
