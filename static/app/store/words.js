/**
 * The clinic's word on what this phone sent: position, time of arrival and receipt, a row for each answer, so that the sealed records
 * need not be read and written once more for it. It goes before what a record's own row says, which is the same word or that of an
 * earlier feed. All of it happens in a transaction that others began; `words` is the store.
 */

/** @typedef {{id: string, position: number | null, receivedAt: string | null, receipt: string | null}} Word  receipt: null where the record's own row may have one */
/** @typedef {import('./rows.js').Row} Row */

/** Rows beyond this are gathered in one when the records are opened: each answer to a single record is a row, too. */
const MOST_ROWS = 100;

/**
 * @param {any} words
 * @param {Word[]} said
 */
export async function noteWords(words, said) {
  if (said.length) await words.put({ said });
}

/**
 * @param {any} words
 * @returns {Promise<Map<string, Word>>}  by id of the record
 */
export async function wordsIn(words) {
  const rows = await words.getAll();
  return new Map(rows.flatMap((/** @type {any} */ { said }) => said).map((/** @type {Word} */ word) => [word.id, word]));
}

/**
 * @param {Row} row
 * @param {Map<string, Word>} words
 * @returns {Row}
 */
export function withWord(row, words) {
  const word = words.get(row.id);
  return word ? { ...row, ...word, receipt: word.receipt ?? row.receipt } : row;
}

/**
 * @param {any} words
 * @param {string[]} ids  of records that are no longer here
 */
export async function forgetWords(words, ids) {
  const gone = new Set(ids);
  for (const { at, said } of gone.size ? await words.getAll() : []) {
    const left = said.filter((/** @type {Word} */ { id }) => !gone.has(id));
    if (left.length === said.length) continue;
    await (left.length ? words.put({ at, said: left }) : words.delete(at));
  }
}

/** @param {any} words */
export async function gatherWords(words) {
  if ((await words.count()) <= MOST_ROWS) return;
  const said = [...(await wordsIn(words)).values()];
  await words.clear();
  await noteWords(words, said);
}
