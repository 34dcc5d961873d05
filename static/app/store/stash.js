/**
 * Sealed draft rows that the database would not take, kept for this tab across a reload (a phone that lost its connection to the
 * storage needs one). They are sealed, so they tell nothing to whoever reads them here.
 */

/** @typedef {{name: string, gone?: true, iv?: Uint8Array, sealed?: ArrayBuffer}} DraftRow */

/**
 * @param {string} key  one for each shelf of each ledger
 * @param {Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> | undefined} [tab]
 */
export function stash(key, tab = globalThis.sessionStorage) {
  return {
    /** @returns {DraftRow[]} */
    recall() {
      const kept = tab?.getItem(key);
      return kept ? JSON.parse(kept).map(fromText) : [];
    },

    /** @param {DraftRow[]} rows  in place of what was kept */
    keep(rows) {
      if (rows.length) tab?.setItem(key, JSON.stringify(rows.map(toText)));
      else tab?.removeItem(key);
    },
  };
}

/** @param {DraftRow} row */
function toText({ name, iv, sealed }) {
  return iv && sealed ? { name, iv: base64(iv), sealed: base64(new Uint8Array(sealed)) } : { name };
}

/**
 * @param {{name: string, iv?: string, sealed?: string}} text
 * @returns {DraftRow}
 */
function fromText({ name, iv, sealed }) {
  return iv && sealed ? { name, iv: bytes(iv), sealed: bytes(sealed).buffer } : { name, gone: true };
}

/** @param {Uint8Array} value */
function base64(value) {
  return btoa(Array.from(value, byte => String.fromCharCode(byte)).join(''));
}

/** @param {string} text */
function bytes(text) {
  return Uint8Array.from(atob(text), letter => letter.charCodeAt(0));
}
