/**
 * A database as JSON, and back: what a version of the app left on a phone, frozen for the versions to come.
 *
 * To freeze the present version (in Node, with `vendor.mjs` imported): fill a phone with `phone.mjs`, then write
 * `JSON.stringify(await dump(ledger.name), null, 1)` to `fixtures/phone/ledger-VERSION.json`.
 */

/** @param {string} name */
export async function dump(name) {
  const db = await settled(indexedDB.open(name));
  const stores = {};
  for (const store of db.objectStoreNames) {
    const objects = db.transaction(store).objectStore(store);
    const [values, keys] = [await settled(objects.getAll()), await settled(objects.getAllKeys())];
    const indexes = [...objects.indexNames].map(index => ({ name: index, keyPath: objects.index(index).keyPath }));
    stores[store] = { keyPath: objects.keyPath, ...(objects.autoIncrement && { autoIncrement: true }), indexes, rows: values.map((value, at) => [keys[at], packed(value)]) };
  }
  const { version } = db;
  db.close();
  return { version, stores };
}

/**
 * @param {string} name
 * @param {any} dumped
 */
export async function restore(name, { version, stores }) {
  const request = indexedDB.open(name, version);
  request.onupgradeneeded = () => {
    for (const [store, { keyPath, autoIncrement = false, indexes }] of Object.entries(stores)) {
      const made = request.result.createObjectStore(store, keyPath === null ? {} : { keyPath, autoIncrement });
      for (const index of indexes) made.createIndex(index.name, index.keyPath);
    }
  };
  const db = await settled(request);
  const tx = db.transaction(Object.keys(stores), 'readwrite');
  for (const [store, { keyPath, rows }] of Object.entries(stores)) {
    for (const [key, value] of rows) tx.objectStore(store).put(unpacked(value), ...(keyPath === null ? [key] : []));
  }
  await new Promise((resolve, reject) => Object.assign(tx, { oncomplete: resolve, onabort: () => reject(tx.error) }));
  db.close();
}

function settled(request) {
  return new Promise((resolve, reject) => Object.assign(request, { onsuccess: () => resolve(request.result), onerror: () => reject(request.error) }));
}

/** Bytes as base64, with their kind. */
function packed(value) {
  if (value instanceof ArrayBuffer) return { buffer: Buffer.from(value).toString('base64') };
  if (ArrayBuffer.isView(value)) return { bytes: Buffer.from(value.buffer, value.byteOffset, value.byteLength).toString('base64') };
  if (Array.isArray(value)) return value.map(packed);
  if (value && typeof value === 'object') return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, packed(each)]));
  return value;
}

function unpacked(value) {
  if (Array.isArray(value)) return value.map(unpacked);
  if (!value || typeof value !== 'object') return value;
  const names = Object.keys(value).join();
  if (names === 'buffer') return Uint8Array.from(Buffer.from(value.buffer, 'base64')).buffer;
  if (names === 'bytes') return Uint8Array.from(Buffer.from(value.bytes, 'base64'));
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, unpacked(each)]));
}
