/** Whose records are carried, in words. Pure. */

/**
 * @param {readonly import('../../store/envelope.js').LedgerRecord[]} records
 * @param {readonly import('../../store/outbox.js').Entry[]} entries
 * @returns {string} empty where nothing is carried
 */
export function carriedWords(records, entries) {
  const carried = new Map(entries.filter((entry) => entry.carried).map((entry) => [entry.id, entry]));
  const here = records.filter(({ id }) => carried.has(id));
  if (here.length === 0) return '';
  const makers = [...new Set(here.map(({ id, author }) => carried.get(id)?.carried?.maker || author))];
  const count = here.length === 1 ? '1 record here was' : `${here.length} records here were`;
  return `${count} handed over by a file from ${listed(makers)}. The clinic has neither got nor checked ${here.length === 1 ? 'it' : 'them'} yet.`;
}

/** @param {string[]} names */
function listed(names) {
  return names.length === 1 ? names[0] : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}
