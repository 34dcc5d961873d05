/**
 * The app's own store and sync in Node: as many phones as the runs want, led by lines of JSON from `phones.py`.
 *
 *     in   {op, do: 'open' | 'save' | 'sync' | 'sign_in', tab, ...}     out  {op, done} or {op, failed: text}
 *     out  {call, tab, method, path, headers, body}                     in   {call, status, text} or {call, lost: true}
 *
 * What is done answers with all that the phone has stored, as a newly opened app finds it. An app dies at a step, a transaction
 * of its database, after which none of its steps is taken any more; it is then started again on the same storage.
 */
import { AsyncLocalStorage } from 'node:async_hooks';
import { isDeepStrictEqual } from 'node:util';
import { createInterface } from 'node:readline';
import { setTimeout as rest } from 'node:timers/promises';
import 'fake-indexeddb/auto';
import { connect, ServerFault } from '../../../../static/app/session/server.js';
import { openLedger } from '../../../../static/app/store/ledger.js';
import { drain } from '../../../../static/app/sync/drain.js';
import { BROKEN } from './broken.mjs';

const SECRET = '482915';
const ROUNDS = 10;
const TOLD_MS = 20_000;

const life = new AsyncLocalStorage();
const { transaction } = IDBDatabase.prototype;
IDBDatabase.prototype.transaction = function (...given) {
  const steps = life.getStore();
  if (steps) {
    steps.dead ||= steps.left === 0;
    if (steps.dead) throw new Error('killed');
    steps.left -= 1;
  }
  return transaction.apply(this, given);
};

let ahead_ms = 0;
const { Date: Present } = globalThis;
globalThis.Date = class extends Present {
  constructor(...given) {
    super(...(given.length ? given : [Present.now() + ahead_ms]));
  }
  static now() {
    return Present.now() + ahead_ms;
  }
};

/** @type {Map<number, (answer: any) => void>} */
const awaited = new Map();
let calls = 0;

const say = message => process.stdout.write(`${JSON.stringify(message)}\n`);

/** Over the line, which is Python's. */
const fetchFor = tab => async (path, { method, headers, body = '' }) => {
  if (life.getStore()?.dead) throw new TypeError('killed');
  const call = (calls += 1);
  say({ call, tab, method, path, headers, body: Buffer.from(body).toString('base64') });
  const { lost, status, text } = await new Promise(answer => awaited.set(call, answer));
  if (lost) throw new TypeError('Failed to fetch');
  return new Response(text, { status, headers: { 'Content-Type': 'application/json' } });
};

/** @type {Map<number, any>} */
const tabs = new Map();

async function opened({ author, clinic, device }) {
  const ledger = openLedger({ author, clinic, device }, { place: `#${device}`, rounds: ROUNDS });
  await ((await ledger.hasSecret()) ? ledger.unlock(SECRET) : ledger.setSecret(SECRET));
  return ledger;
}

async function start(tab) {
  const made = { ledger: await opened(tab.who), server: connect({ fetch: fetchFor(tab.number) }) };
  Object.assign(tab, tab.fault ? BROKEN[tab.fault](made) : made);
}

async function stored(tab) {
  if (tab.phone.wiped) return { wiped: true };
  const fresh = await opened(tab.who);
  try {
    return { ...said(fresh), broken: fresh.broken.get(), place: await fresh.place() };
  } finally {
    fresh.close();
  }
}

const said = ({ records, outbox }) => ({ records: records.get(), outbox: outbox.get() });
/** In one form, whichever way a record came: a saved one has no receipt, a stored one has null. */
const seen = ({ records, outbox }) => ({ records: Object.fromEntries(records.map(record => [record.id, { receipt: null, ...record }])), outbox });

/** What is stored, which the open app shows too as soon as it has been told. */
async function told(tab) {
  for (const end = Present.now() + TOLD_MS; ; await rest(5)) {
    const now = await stored(tab);
    if (now.wiped || tab.fault || isDeepStrictEqual(seen(said(tab.ledger)), seen(now))) return now;
    if (Present.now() > end) throw new Error(`the app shows ${JSON.stringify(seen(said(tab.ledger)))}, and stored is ${JSON.stringify(seen(now))}`);
  }
}

/** `work` in an app that dies after `steps`, if it takes so many; it is then started again. */
async function lived(tab, steps, work) {
  const steps_ = { left: steps ?? Infinity, dead: false };
  let done = null;
  try {
    done = await life.run(steps_, work);
  } catch (error) {
    if (!steps_.dead) throw error;
  }
  if (steps_.dead) {
    tab.ledger.close();
    await start(tab);
  }
  return { ...(steps_.dead ? { killed: true } : done), stored: await told(tab) };
}

async function wipe(tab) {
  tab.phone.wiped = true;
  for (const other of tabs.values()) if (other.phone === tab.phone && other !== tab) other.ledger.close();
  await tab.ledger.erase();
}

const DO = {
  async open({ tab: number, who, fault }) {
    const phone = [...tabs.values()].find(({ who: { device } }) => device === who.device)?.phone ?? { wiped: false };
    const tab = { number, who, fault, phone };
    await start(tab);
    tabs.set(number, tab);
    return { stored: await told(tab) };
  },

  /** The record is made here, by this phone's clock. */
  save({ tab: number, record: { kind, recorded_at, ...saving }, dies_after }) {
    const tab = tabs.get(number);
    return lived(tab, dies_after, async () => {
      ahead_ms = Present.parse(recorded_at) - Present.now();
      const saving_ = tab.ledger.save(kind, saving);
      ahead_ms = 0;
      return { saved: await saving_ };
    });
  },

  sync({ tab: number, dies_after }) {
    const tab = tabs.get(number);
    return lived(tab, dies_after, async () => {
      if (tab.phone.wiped) return { end: 'done', problem: null };
      const outcome = await drain(tab.ledger, tab.server, { locks: null });
      if (outcome.end === 'wipe' && !tab.phone.wiped) await wipe(tab);
      return outcome;
    });
  },

  async sign_in({ tab: number, username, password }) {
    const { server, who } = tabs.get(number);
    try {
      await server.signIn({ username, password, device: { id: who.device, name: 'Phone' } });
      return {};
    } catch (error) {
      if (error instanceof ServerFault) return { refused: error.code };
      throw error;
    }
  },
};

createInterface({ input: process.stdin })
  .on('line', line => {
    const { op, do: name, ...told } = JSON.parse(line);
    if (op === undefined) {
      awaited.get(told.call)(told);
      awaited.delete(told.call);
      return;
    }
    DO[name](told).then(done => say({ op, done }), error => say({ op, failed: error.stack }));
  })
  .on('close', () => process.exit());
