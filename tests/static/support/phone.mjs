/** An invented phone in Node: a ledger over fake IndexedDB, with a short key derivation so that tests are quick. */
import 'fake-indexeddb/auto';
import { openLedger } from '../../../static/app/store/ledger.js';
import { uuid7 } from '../../../static/app/store/uuid7.js';

export const CLINIC = '0197c0de-0000-7000-8000-00000000c11c';
export const SECRET = '482915';

let phones = 0;

// In Node an open channel would keep the test from ending.
const Channel = globalThis.BroadcastChannel;
globalThis.BroadcastChannel = class extends Channel {
  constructor(name) {
    super(name);
    this.unref();
  }
};

/** Another phone; `place` of an earlier one opens the same storage again, as after a restart. */
export function phone({ author = 'noor', place = `#${(phones += 1)}`, device = uuid7(), ...options } = {}) {
  const ledger = openLedger({ author, clinic: CLINIC, device }, { place, rounds: 10, ...options });
  return Object.assign(ledger, { place_: place });
}

export async function openPhone(options) {
  const ledger = phone(options);
  await ((await ledger.hasSecret()) ? ledger.unlock(SECRET) : ledger.setSecret(SECRET));
  return ledger;
}

export const PATIENT = {
  schema: 1, full_name: 'Ilse Vantongeren', born_on: '2019-04-02', hospital_number: 'Q-20417', sex: 'female', allergies: 'latex', note: '',
};

/** A patient with an examination, saved on this phone. */
export async function savePatient(ledger, name = PATIENT.full_name) {
  const patient = await ledger.save('patient', { body: { ...PATIENT, full_name: name } });
  const examination = await ledger.save('examination', {
    patient: patient.id,
    body: { schema: 1, examined_on: '2026-11-25', readings: [{ gaze: 'primary', range: 'distance', correction: 'with', horizontal_pd: 40 }] },
  });
  return { patient, examination };
}

/** The clinic's word on a record that was sent as it is here. */
export function verdict(ledger, id, to, answer) {
  return { id, made: ledger.find(id).recorded_at, to, answer: { id, ...answer } };
}

/** Everything that lies in a database, as text: what a thief would read. */
export async function rawText(name) {
  const db = await new Promise((resolve, reject) => {
    const request = indexedDB.open(name);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  let text = '';
  for (const store of db.objectStoreNames) {
    const objects = db.transaction(store).objectStore(store);
    for (const request of [objects.getAll(), objects.getAllKeys()]) {
      await new Promise(resolve => (request.onsuccess = resolve));
      text += JSON.stringify(request.result, (_key, value) => {
        if (value instanceof ArrayBuffer) return Buffer.from(value).toString('latin1');
        return ArrayBuffer.isView(value) ? Buffer.from(value.buffer).toString('latin1') : value;
      });
    }
  }
  db.close();
  return text;
}
