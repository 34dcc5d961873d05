/**
 * Fetches what the clinic has that this phone has not, page by page; rows and cursor are stored in one transaction.
 *
 * When the cursor belongs to another feed (a restored backup), everything is fetched again beside what is here, and put in its
 * place when it is complete. An interrupted fetch goes on where it stopped.
 */

/** @typedef {import('../store/ledger.js').Ledger} Ledger */

const PAGE = 500;

/**
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @returns {Promise<{taken: number}>}
 */
export async function pull(ledger, server) {
  const place = await ledger.place();
  if (place.staging) return { taken: await fetchAfresh(ledger, server, place.staging.cursor) };
  let taken = 0;
  let { cursor } = place;
  for (;;) {
    const page = await fetchPage(ledger, server, cursor);
    if (page.reset) {
      await ledger.startStaging();
      return { taken: await fetchAfresh(ledger, server, '') };
    }
    if (page.records.length || page.cursor !== cursor || !place.complete) {
      await ledger.takeIn(page.records, page.cursor, page.more);
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
      await ledger.startStaging();
      cursor = '';
      continue;
    }
    await ledger.stage(page.records, page.cursor);
    taken += page.records.length;
    cursor = page.cursor;
    if (!page.more) break;
  }
  await ledger.swap();
  return taken;
}

/**
 * @param {Ledger} ledger
 * @param {import('../session/server.js').Server} server
 * @param {string} cursor
 * @returns {Promise<{records: import('../store/envelope.js').LedgerRecord[], cursor: string, more: boolean, reset: boolean}>}
 */
function fetchPage(ledger, server, cursor) {
  const query = new URLSearchParams({ after: cursor, limit: String(PAGE), device: ledger.device });
  return server.call('GET', `/api/v1/clinics/${ledger.clinic}/pull?${query}`);
}
