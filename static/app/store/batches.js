/** Many rows of a store in few requests; `ids` are the keys of a map. */

/**
 * All at once; where there is no room for one, the one error stands for those that are aborted with it.
 *
 * @param {any} store
 * @param {object[]} rows
 */
export async function putAll(store, rows) {
  await Promise.all(rows.map(async row => store.put(row)));
}

/**
 * @param {any} store
 * @param {Map<string, unknown>} ids
 * @returns {Promise<any[]>}  the rows that are there
 */
export function rowsOf(store, ids) {
  return found(store, ids, { one: id => store.get(id), all: span => store.getAll(span), idOf: row => row.id });
}

/**
 * @param {any} store
 * @param {Map<string, unknown>} ids
 * @returns {Promise<string[]>}  the keys of the rows that are there
 */
export function keysOf(store, ids) {
  return found(store, ids, { one: id => store.getKey(id), all: span => store.getAllKeys(span), idOf: id => id });
}

/**
 * What a batch is of was mostly made one after the other, and ids follow the time: one reading from the first to the last then
 * brings it, where a reading of each would take longer than all else.
 *
 * @param {any} store
 * @param {Map<string, unknown>} ids
 * @param {{one: (id: string) => Promise<any>, all: (span: IDBKeyRange) => Promise<any[]>, idOf: (each: any) => string}} read
 */
async function found(store, ids, { one, all, idOf }) {
  if (!ids.size) return [];
  const span = spanOf(ids);
  if ((await store.count(span)) > 2 * ids.size) return (await Promise.all([...ids.keys()].map(one))).filter(Boolean);
  return (await all(span)).filter(each => ids.has(idOf(each)));
}

/**
 * @param {any} store
 * @param {Map<string, unknown>} ids
 */
export async function dropAll(store, ids) {
  if (!ids.size) return;
  const span = spanOf(ids);
  const found = /** @type {string[]} */ (await store.getAllKeys(span));
  if (found.every(id => ids.has(id))) await store.delete(span);
  else await Promise.all([...ids.keys()].map(id => store.delete(id)));
}

/** @param {Map<string, unknown>} ids  at least one */
function spanOf(ids) {
  const sorted = [...ids.keys()].sort();
  return IDBKeyRange.bound(sorted[0], sorted[sorted.length - 1]);
}
