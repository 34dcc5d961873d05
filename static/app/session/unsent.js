/** What is not with the clinic yet, counted and in words. */

/** @param {{records: number, drafts: number}} unsent */
export function total({ records, drafts }) {
  return records + drafts;
}

/** @param {{records: number, drafts: number}} unsent */
export function inWords({ records, drafts }) {
  const words = (/** @type {number} */ count, /** @type {string} */ noun) => (count ? [`${count} ${noun}${count === 1 ? '' : 's'}`] : []);
  return [...words(records, 'record'), ...words(drafts, 'draft')].join(' and ') || 'nothing';
}
