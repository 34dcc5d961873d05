/**
 * The stores of the two databases, version by version. A released step is never edited: a change is a new step.
 *
 * The ledger, one database per user and clinic. In clear: record ids, feed positions, times of arrival, receipts and the states
 * of the outbox. Everything else of a record, a draft or a reason is sealed (`vault.js`).
 *
 *     meta      key -> lock, attempts, cursor, staging, recheck, complete, lastHeard; recovery, recoveryDue, recoveryAgain (`recovery.js`);
 *               carrying (`carrying.js`)
 *     records   {id, position, receivedAt, receipt, iv, sealed}
 *     words     {at, said: [{id, position, receivedAt, receipt}]}; what the clinic said of records that were sent (`words.js`)
 *     staging   as records, while a new feed is fetched
 *     outbox    {id, sequence, state, since, carried, offered, iv, sealed}
 *     drafts    {name, iv, sealed}; the name is a keyed hash
 *     kept      the same, for what can be made again
 *
 * The device: facts about this phone and who uses it (`device.js`); nothing of a patient.
 */

/** @type {import('./db.js').Step[]} */
export const LEDGER_STEPS = [
  db => {
    db.createObjectStore('meta');
    db.createObjectStore('records', { keyPath: 'id' });
    db.createObjectStore('staging', { keyPath: 'id' });
    db.createObjectStore('outbox', { keyPath: 'id' }).createIndex('sequence', 'sequence');
    db.createObjectStore('drafts', { keyPath: 'name' });
  },
  db => {
    db.createObjectStore('kept', { keyPath: 'name' });
  },
  db => {
    db.createObjectStore('words', { keyPath: 'at', autoIncrement: true });
  },
];

/** @type {import('./db.js').Step[]} */
export const DEVICE_STEPS = [
  db => {
    db.createObjectStore('facts');
  },
];
