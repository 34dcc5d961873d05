/**
 * Fetches what the clinic has that this phone has not, page by page; rows, removals and cursor are stored in one transaction.
 *
 * When the cursor belongs to another feed (a restored backup) or another scope (another role), everything is fetched again beside
 * what is here, and put in its place when it is complete. An interrupted fetch goes on where it stopped. A fetch from the
 * beginning carries no cursor, so the clinic cannot say whether it was restored meanwhile; before anything is removed for being
 * out of scope, the old cursor is therefore shown once more.
 */

/** @typedef {import('../store/ledger.js').Ledger} Ledger */
/**
 * @typedef {object} Page
 * @property {import('../store/envelope.js').LedgerRecord[]} records
 * @property {string[]} [removed]
 * @property {string} cursor
 * @property {boolean} more
 * @property {boolean} reset
 * @property {boolean} [restored]
 */

const PAGE = 500;

/**
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @returns {Promise<{taken: number}>}
 */
export async function pull(ledger, server) {
  const place = await ledger.place();
  if (place.staging) return { taken: await fetchAfresh(ledger, server, place.staging.cursor) };
  if (place.recheck && !ledger.outbox.get().some(entry => entry.offered && entry.state === 'waiting')) {
    await ledger.startStaging({ restored: false });
    return { taken: await fetchAfresh(ledger, server, '') };
  }
  let taken = 0;
  let { cursor } = place;
  for (;;) {
    const page = await fetchPage(ledger, server, cursor);
    if (page.reset) {
      await ledger.startStaging({ restored: isRestored(page) });
      return { taken: await fetchAfresh(ledger, server, '') };
    }
    const { records, cursor: reached, more, removed = [] } = page;
    if (records.length || removed.length || reached !== cursor || !place.complete) {
      await ledger.takeIn({ records, removed, after: cursor, cursor: reached, more });
    }
    taken += page.records.length;
    cursor = page.cursor;
    if (!page.more) return { taken };
  }
}

/**
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @param {string} cursor
 */
async function fetchAfresh(ledger, server, cursor) {
  let taken = 0;
  for (;;) {
    const page = await fetchPage(ledger, server, cursor);
    if (page.reset) {
      // The feed changed once more while it was fetched.
      await ledger.startStaging({ restored: isRestored(page) });
      cursor = '';
      continue;
    }
    const { records, removed = [] } = page;
    await ledger.stage({ records, removed, after: cursor, cursor: page.cursor });
    taken += records.length;
    cursor = page.cursor;
    if (!page.more) break;
  }
  const { staging, cursor: old } = await ledger.place();
  if (staging && !staging.restored && isRestored(await fetchPage(ledger, server, old, 1))) await ledger.noteRestored();
  await ledger.swap(cursor);
  return taken;
}

/** @param {Page} page */
function isRestored({ reset, restored }) {
  return reset && restored !== false;
}

/**
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @param {string} cursor
 * @param {number} [most]
 * @returns {Promise<Page>}
 */
function fetchPage(ledger, server, cursor, most = PAGE) {
  const query = new URLSearchParams({ after: cursor, limit: String(most), device: ledger.device });
  return server.call('GET', `/api/v1/clinics/${ledger.clinic}/pull?${query}`);
}
