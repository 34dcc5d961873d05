/** Hand-overs between invented phones, with a short key derivation so that tests are quick. */
import { makeHandOver } from '../../../static/app/handover/giving.js';
import { takeHandOver } from '../../../static/app/handover/taking.js';

export const WORDS = 'anchor blanket candle dolphin feather garden';
export const ROUNDS = 10;

const NAMES = { noor: 'Dr Noor Haddad', bilal: 'Bilal Osei' };

export function from(ledger, role = 'surgeon') {
  return { username: ledger.author, full_name: NAMES[ledger.author] ?? ledger.author, role, device: ledger.device, device_name: 'Phone' };
}

export const give = (ledger, { choice = 'unsent', role, passphrase = WORDS } = {}) =>
  makeHandOver({ ledger, from: from(ledger, role), choice, passphrase, rounds: ROUNDS });

export const take = (ledger, { bytes }, { role = 'surgeon', passphrase = WORDS } = {}) =>
  takeHandOver({ ledger, role, bytes, passphrase, leastRounds: ROUNDS });

/** What a person sees there, and what the clinic knows. */
export const seen = ledger => new Map([...ledger.records.get()].map(({ id, digest, author, device }) => [id, `${digest} ${author} ${device}`]).sort());
