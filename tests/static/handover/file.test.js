import assert from 'node:assert/strict';
import { test } from 'node:test';
import { normalPassphrase, readFile, readHeader, ROUNDS, writeFile } from '../../../static/app/handover/file.js';
import { proposeWords } from '../../../static/app/handover/words.js';
import { CLINIC } from '../support/phone.mjs';

const WORDS = 'anchor blanket candle dolphin feather garden';
const MADE_AT = '2026-11-25T09:30:00+01:00';
const PAGES = [{ count: 2 }, { items: ['Ilse Vantongeren'] }, { items: ['Q-20417'] }];
const quick = { leastRounds: 10 };
const write = (pages = PAGES, passphrase = WORDS) => writeFile({ clinic: CLINIC, made_at: MADE_AT, pages, passphrase, rounds: 10 });

test('what was sealed is read again with the same words, as they are told by mouth', async () => {
  const bytes = await write();
  for (const said of [WORDS, ` ${WORDS.toUpperCase()}\n`, WORDS.replaceAll(' ', '-'), WORDS.replaceAll(' ', ', ')]) {
    assert.deepEqual((await readFile(bytes, said, quick)).pages, PAGES);
  }
  assert.equal(normalPassphrase('  Anchor-BLANKET  candle. '), 'anchor blanket candle');
});

test('the header tells the clinic and the time before the words are known, and nothing else is in clear', async () => {
  const bytes = await write();
  const { clinic, made_at } = readHeader(bytes);
  assert.deepEqual([clinic, made_at], [CLINIC, MADE_AT]);
  const text = Buffer.from(bytes).toString('latin1');
  assert.ok(!/Ilse|Vantongeren|Q-20417|items/.test(text));
});

test('a million rounds are made unless a test asks for fewer, and fewer are not taken', async () => {
  const strong = await writeFile({ clinic: CLINIC, made_at: MADE_AT, pages: [1], passphrase: WORDS });
  assert.equal(readHeader(strong).rounds, 1_000_000);
  assert.deepEqual((await readFile(strong, WORDS)).pages, [1]);
  assert.equal(ROUNDS, 1_000_000);
  await assert.rejects(readFile(await write(), WORDS), { code: 'file_weak' });
});

test('an endless derivation is not begun', async () => {
  const bytes = await writeFile({ clinic: CLINIC, made_at: MADE_AT, pages: [1], passphrase: WORDS, rounds: 10 });
  const endless = Buffer.from(Buffer.from(bytes).toString('latin1').replace('"rounds":10', '"rounds":99999999').replace(/^(PPCARRY1)(....)/s, (_all, magic, length) => {
    const told = Buffer.from(length, 'latin1').readUInt32BE() + 6;
    const next = Buffer.alloc(4);
    next.writeUInt32BE(told);
    return magic + next.toString('latin1');
  }), 'latin1');
  await assert.rejects(readFile(new Uint8Array(endless), WORDS, quick), { code: 'file_weak' });
});

test('other words open nothing', async () => {
  await assert.rejects(readFile(await write(), WORDS.replace('garden', 'garlic'), quick), { code: 'wrong_passphrase', field: 'passphrase' });
});

test('words that could be guessed are not taken', async () => {
  await assert.rejects(write(PAGES, 'anchor blanket'), { code: 'passphrase_short' });
});

test('one changed byte anywhere is refused', async () => {
  const bytes = await write([{ count: 0 }, { items: [] }]);
  for (let place = 0; place < bytes.length; place += 1) {
    const changed = bytes.slice();
    changed[place] ^= 1;
    await assert.rejects(readFile(changed, WORDS, quick), fault =>
      ['file_foreign', 'file_damaged', 'file_weak', 'wrong_passphrase'].includes(fault.code), `byte ${place}`);
  }
});

test('a file that was cut off at any place is refused', async () => {
  const bytes = await write([{ count: 0 }, { items: [] }]);
  for (let length = 0; length < bytes.length; length += 1) {
    await assert.rejects(readFile(bytes.slice(0, length), WORDS, quick), fault => /file_|wrong_/.test(fault.code), `${length} bytes`);
  }
});

test('a page that is left out, moved or repeated is refused', async () => {
  const bytes = await write();
  const view = new DataView(bytes.buffer);
  const pages = [];
  let place = 12 + view.getUint32(8);
  const top = bytes.slice(0, place);
  while (place < bytes.length) {
    const end = place + 4 + view.getUint32(place);
    pages.push(bytes.slice(place, end));
    place = end;
  }
  const built = order => new Uint8Array(Buffer.concat([top, ...order.map(index => pages[index])]));
  assert.deepEqual((await readFile(built([0, 1, 2]), WORDS, quick)).pages, PAGES);
  for (const order of [[0, 1], [0, 2], [0, 2, 1], [0, 1, 1, 2], [0, 1, 2, 2]]) {
    await assert.rejects(readFile(built(order), WORDS, quick), { code: 'file_damaged' }, String(order));
  }
  await assert.rejects(readFile(built([1, 0, 2]), WORDS, quick), { code: 'wrong_passphrase' });
});

test('a file of anything else is refused as such', async () => {
  for (const text of ['', 'x', '%PDF-1.7 and so on and so on', 'PPCARRY2 is a later format']) {
    await assert.rejects(readFile(new TextEncoder().encode(text), WORDS, quick), { code: 'file_foreign' });
  }
});

test('the same pages under the same words look different each time', async () => {
  const [one, other] = await Promise.all([write(), write()]);
  assert.notDeepEqual(one.slice(-40), other.slice(-40));
});

test('six words are proposed, other ones each time, all from one list of 256', () => {
  const drawn = Array.from({ length: 4000 }, proposeWords);
  assert.ok(drawn.every(words => words.length === 6 && words.every(word => /^[a-z]{4,10}$/.test(word))));
  assert.equal(new Set(drawn.flat()).size, 256);
  assert.equal(new Set(drawn.map(words => words.join(' '))).size, 4000);
});
