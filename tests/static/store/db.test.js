import 'fake-indexeddb/auto';
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { unwrap } from 'idb';
import { database } from '../../../static/app/store/db.js';

let made = 0;
const freshName = () => `db-${(made += 1)}`;
const steps = [db => void db.createObjectStore('notes')];
const put = (key, value) => tx => tx.objectStore('notes').put(value, key);
const get = key => tx => tx.objectStore('notes').get(key);

/** What the browser hands out for a name, caught on its way, so that a test can break it. */
function watchHandles() {
  const handles = [];
  const open = indexedDB.open;
  indexedDB.open = (...args) => {
    const request = open.apply(indexedDB, args);
    request.addEventListener('success', () => handles.push(request.result));
    return request;
  };
  return { handles, stop: () => (indexedDB.open = open) };
}

test('work is done when the transaction is complete, and its result is handed on', async () => {
  const db = database(freshName(), steps);
  assert.equal(await db.run(['notes'], 'readwrite', put('a', 1)), 'a');
  assert.equal(await db.run(['notes'], 'readonly', get('a')), 1);
});

test('an error inside the work leaves nothing of it behind', async () => {
  const db = database(freshName(), steps);
  const half = async tx => {
    await tx.objectStore('notes').put(1, 'a');
    throw new RangeError('stop');
  };
  await assert.rejects(db.run(['notes'], 'readwrite', half), RangeError);
  assert.equal(await db.run(['notes'], 'readonly', get('a')), undefined);
});

test('a connection that died is opened again and the work is done, once', async () => {
  const { handles, stop } = watchHandles();
  const db = database(freshName(), steps);
  await db.run(['notes'], 'readwrite', put('a', 1));
  handles[0].close();
  let runs = 0;
  await db.run(['notes'], 'readwrite', tx => {
    runs += 1;
    return tx.objectStore('notes').put(2, 'a');
  });
  stop();
  assert.deepEqual([handles.length, runs], [2, 1]);
  assert.equal(await db.run(['notes'], 'readonly', get('a')), 2);
});

test('a connection that dies again at once is told as lost, and the next call tries afresh', async () => {
  const notices = [];
  const db = database(freshName(), steps, { notify: notice => notices.push(notice) });
  const dead = () => {
    throw new DOMException('Connection to Indexed Database server lost. Refresh the page to try again', 'UnknownError');
  };
  await assert.rejects(db.run(['notes'], 'readwrite', dead), { code: 'storage_lost' });
  assert.deepEqual(notices, ['lost']);
  await db.run(['notes'], 'readwrite', put('a', 1));
});

test('a full storage is told as such even when only the transaction knows', async () => {
  const db = database(freshName(), steps);
  const full = async tx => {
    const written = tx.objectStore('notes').put(1, 'a');
    // As some browsers do: the request was accepted, the transaction is aborted for want of room.
    unwrap(tx)._abort('QuotaExceededError');
    await written;
  };
  await assert.rejects(db.run(['notes'], 'readwrite', full), fault => fault.code === 'storage_full' && /Nothing was saved/.test(fault.text));
});

test('a transaction that fails after all its requests succeeded is no success', async () => {
  const db = database(freshName(), steps);
  const undone = async tx => {
    await tx.objectStore('notes').put(1, 'a');
    unwrap(tx)._abort('QuotaExceededError');
    return 'saved?';
  };
  await assert.rejects(db.run(['notes'], 'readwrite', undone), { code: 'storage_full' });
  assert.equal(await db.run(['notes'], 'readonly', get('a')), undefined);
});

test('work that does not end in time is an error, and is undone', async () => {
  const db = database(freshName(), steps, { work_ms: 30 });
  const endless = async tx => {
    await tx.objectStore('notes').put(1, 'a');
    for (;;) await tx.objectStore('notes').get('a');
  };
  await assert.rejects(db.run(['notes'], 'readwrite', endless), { code: 'storage_timeout' });
  const again = database(db.name, steps);
  assert.equal(await again.run(['notes'], 'readonly', get('a')), undefined);
});

test('each version is reached by its own step from the one before, with what was stored', async () => {
  const name = freshName();
  const first = database(name, steps);
  await first.run(['notes'], 'readwrite', put('a', 1));
  first.close();
  const second = database(name, [...steps, (db, tx) => void tx.objectStore('notes').put('added', 'b')]);
  assert.deepEqual(await second.run(['notes'], 'readonly', tx => tx.objectStore('notes').getAll()), [1, 'added']);
});

test('an open older tab lets go for a newer version, says so, and does not come back', async () => {
  const name = freshName();
  const notices = [];
  const older = database(name, steps, { notify: notice => notices.push(notice) });
  await older.run(['notes'], 'readwrite', put('a', 1));
  const newer = database(name, [...steps, db => void db.createObjectStore('more')]);
  await newer.run(['more'], 'readwrite', tx => tx.objectStore('more').put(1, 'b'));
  assert.deepEqual(notices, ['outdated']);
  await assert.rejects(older.run(['notes'], 'readonly', get('a')), { code: 'app_outdated' });
});

test('an older tab that does not let go is told of; the opening gives up in time and works when that tab is closed', async () => {
  const name = freshName();
  const stubborn = await new Promise(resolve => {
    const request = indexedDB.open(name, 1);
    request.onupgradeneeded = () => request.result.createObjectStore('notes');
    request.onsuccess = () => resolve(request.result);
  });
  const notices = [];
  const newer = database(name, [...steps, db => void db.createObjectStore('more')], {
    notify: notice => notices.push(notice), open_ms: 60,
  });
  await assert.rejects(newer.run(['more'], 'readonly', tx => tx.objectStore('more').count()), { code: 'storage_blocked' });
  assert.deepEqual(notices, ['blocked']);
  stubborn.close();
  assert.equal(await newer.run(['more'], 'readonly', tx => tx.objectStore('more').count()), 0);
});

test('a failed opening is not kept', async () => {
  const open = indexedDB.open;
  const db = database(freshName(), steps);
  indexedDB.open = () => {
    throw new DOMException('no', 'UnknownError');
  };
  await assert.rejects(db.run(['notes'], 'readonly', get('a')), { code: 'storage_lost' });
  indexedDB.open = open;
  assert.equal(await db.run(['notes'], 'readonly', get('a')), undefined);
});

test('what is closed or erased stays closed for work still under way', async () => {
  const db = database(freshName(), steps);
  await db.run(['notes'], 'readwrite', put('a', 1));
  await db.erase();
  await assert.rejects(db.run(['notes'], 'readonly', get('a')), { code: 'storage_closed' });
  assert.ok(!(await indexedDB.databases()).some(({ name }) => name === db.name));
});
