import assert from 'node:assert/strict';
import { test } from 'node:test';
import { blindName, makeVault, openVault, rewrap, seal, unseal } from '../../../static/app/store/vault.js';

const quick = { rounds: 10 };
const sealBroken = { code: 'seal_broken' };

test('the lock takes 600,000 rounds of PBKDF2 and its own salt', async () => {
  const [one, other] = await Promise.all([makeVault('482915'), makeVault('482915')]);
  assert.equal(one.lock.rounds, 600_000);
  assert.equal(one.lock.salt.length, 16);
  assert.notDeepEqual(one.lock.salt, other.lock.salt);
  assert.notDeepEqual(new Uint8Array(one.lock.wrapped), new Uint8Array(other.lock.wrapped));
});

test('what is sealed opens with the secret, after the keys were forgotten', async () => {
  const { lock, keys } = await makeVault('482915', quick);
  const sealed = await seal(keys, 'record:a', { name: 'Ilse' });
  assert.deepEqual(await unseal(await openVault(lock, '482915'), 'record:a', sealed), { name: 'Ilse' });
});

test('a wrong secret is refused', async () => {
  const { lock } = await makeVault('482915', quick);
  await assert.rejects(openVault(lock, '482916'), { code: 'wrong_secret', field: 'secret' });
});

test('a passphrase typed in another Unicode form is the same passphrase', async () => {
  const { lock } = await makeVault('caf\u00e9 au lait', quick);
  await openVault(lock, 'cafe\u0301 au lait');
});

test('a ciphertext moved to another place does not open', async () => {
  const { keys } = await makeVault('482915', quick);
  const sealed = await seal(keys, 'record:a', { eye: 'right' });
  await assert.rejects(unseal(keys, 'record:b', sealed), sealBroken);
  await assert.rejects(unseal(keys, 'draft:a', sealed), sealBroken);
});

test('a ciphertext changed in any one byte does not open', async () => {
  const { keys } = await makeVault('482915', quick);
  const { iv, sealed } = await seal(keys, 'record:a', { mm: 5 });
  for (let place = 0; place < sealed.byteLength; place += 1) {
    const changed = sealed.slice();
    new Uint8Array(changed)[place] ^= 1;
    await assert.rejects(unseal(keys, 'record:a', { iv, sealed: changed }), sealBroken);
  }
});

test('the same value sealed twice looks different', async () => {
  const { keys } = await makeVault('482915', quick);
  const [one, other] = [await seal(keys, 'record:a', 1), await seal(keys, 'record:a', 1)];
  assert.notDeepEqual(one.iv, other.iv);
  assert.notDeepEqual(new Uint8Array(one.sealed), new Uint8Array(other.sealed));
});

test('a changed secret opens what the old one sealed, and the old one no longer does', async () => {
  const { lock, keys } = await makeVault('482915', quick);
  const sealed = await seal(keys, 'record:a', 'kept');
  const next = await rewrap(lock, '482915', 'a long passphrase');
  assert.equal(await unseal(await openVault(next, 'a long passphrase'), 'record:a', sealed), 'kept');
  await assert.rejects(openVault(next, '482915'), { code: 'wrong_secret' });
  await assert.rejects(rewrap(lock, '000001', 'a long passphrase'), { code: 'wrong_secret' });
});

test('the keys cannot be taken out of the browser', async () => {
  const { keys } = await makeVault('482915', quick);
  await assert.rejects(crypto.subtle.exportKey('raw', keys.records));
  await assert.rejects(crypto.subtle.exportKey('raw', keys.names));
});

test('a blind name is the same each time and another for other keys', async () => {
  const [one, other] = [await makeVault('482915', quick), await makeVault('482915', quick)];
  const name = await blindName(one.keys, 'examination/p1');
  assert.equal(await blindName(one.keys, 'examination/p1'), name);
  assert.notEqual(await blindName(other.keys, 'examination/p1'), name);
  assert.match(name, /^[0-9a-f]{64}$/);
});
