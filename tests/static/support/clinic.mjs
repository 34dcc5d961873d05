/**
 * An invented server: it keeps the protocol of `clinic/sync/protocol.py`, and misbehaves when told to. `before` and `after` may
 * throw to lose a request or a reply. `restore(kept)` is a restored backup of its first records; `revoke(device)` and `close(device)`
 * do to a device what a person or its time does; `hides(record)` narrows the scope, `scope` names it, `removed` is told once.
 */
import { canonical, sha256 } from '../../../static/app/store/canonical.js';
import { ServerFault } from '../../../static/app/session/server.js';

export const unreachable = () => new ServerFault(0, { code: 'unreachable', text: 'no network' });

export function clinic({ username = 'noor', feed = 'feed-1', page = 500 } = {}) {
  const self = {
    feed,
    username,
    minimum_client: 1,
    /** In feed order. */
    records: [],
    calls: [],
    scope: 'all',
    hides: () => false,
    removed: [],
    revoked: new Set(),
    closed: new Set(),
    before: () => {},
    after: () => {},
    judge: () => null,

    async greet() {
      self.calls.push('GET session');
      self.hello = { csrf_token: 't', user: self.username && { username: self.username }, minimum_client: self.minimum_client, clinics: [] };
      return self.hello;
    },
    lastHello: () => self.hello ?? null,

    /** The clinic's halves of recovery, and what it gave for carrying: no part of sync, and not among the calls. */
    half: null,
    carryingKey: 'cd'.repeat(32),

    keys(method, path, body) {
      if (path.includes('/carrying')) return { key: self.carryingKey };
      if (method === 'PUT') self.half = { key_id: body.key_id, key: body.key };
      if (!self.half) throw new ServerFault(404, { code: 'recovery_unknown', text: 'This device left nothing here.' });
      return structuredClone(self.half);
    },

    async call(method, path, { body } = {}) {
      if (path.includes('/recovery') || path.includes('/carrying')) return self.keys(method, path, body);
      const what = path.includes('/push') ? 'push' : 'pull';
      self.calls.push(what);
      const said = await opened(body);
      self.before(what, said, path);
      const query = new URL(path, 'http://clinic').searchParams;
      const device = body?.device ?? query.get('device');
      if (self.closed.has(device)) throw new ServerFault(403, { code: 'device_closed', text: 'Closed.' });
      if (what === 'pull' && self.revoked.has(device)) throw new ServerFault(403, { code: 'device_revoked', text: 'Revoked.' });
      const answer = what === 'push' ? self.push(said) : self.pull(query);
      self.after(what, answer);
      return body?.parcel ? inItsOrder(structuredClone(answer), body.parcel.digest) : structuredClone(answer);
    },

    restore(kept) {
      self.records = self.records.slice(0, kept);
      self.feed = `feed-${Number(self.feed.split('-')[1]) + 1}`;
    },
    revoke: device => self.revoked.add(device),
    close: device => self.closed.add(device),

    push({ records, device, last = false }) {
      const results = records.map(record => self.receive(structuredClone(record)));
      const wipe = self.revoked.has(device);
      if (wipe && last && !results.some(({ retryable }) => retryable)) self.closed.add(device);
      return { server_time: new Date().toISOString(), wipe, runs: self.runs(results), results };
    },

    runs(results) {
      if (self.scope !== 'all') return [];
      const held = new Set(results.map(each => each.position));
      const firsts = [...held].filter(position => position && !held.has(position - 1)).sort((a, b) => a - b);
      return firsts.map(first => {
        let last = first;
        while (held.has(last + 1)) last += 1;
        return { after: self.cursor(first - 1), cursor: self.cursor(last), more: last < self.records.length };
      });
    },

    receive({ receipt, ...record }) {
      const answer = self.judged(record, receipt);
      return { receipt: answer.status === 'rejected' ? null : receiptOf(record), ...answer };
    },

    judged(record, receipt) {
      if (record.author !== self.username && receipt !== receiptOf(record)) {
        return { id: record.id, status: 'rejected', code: 'receipt_invalid', text: 'Not ours.', retryable: false };
      }
      const refusal = self.judge(record);
      if (refusal) return { id: record.id, status: 'rejected', retryable: false, ...refusal };
      const known = self.records.find(each => each.id === record.id);
      if (!known) {
        const lacking = [record.patient, ...record.supersedes].filter(id => id !== record.id && !self.records.some(each => each.id === id));
        if (lacking.length) return { id: record.id, status: 'rejected', code: 'reference_unknown', text: 'Not yet.', retryable: true };
        const stored = { ...record, position: self.records.length + 1, received_at: new Date().toISOString() };
        self.records.push(stored);
        return { id: record.id, status: 'accepted', position: stored.position, received_at: stored.received_at };
      }
      const { position, received_at, ...before } = known;
      if (canonical(before) === canonical(record)) return { id: record.id, status: 'duplicate', position, received_at };
      return { id: record.id, status: 'rejected', code: 'id_taken', text: 'Another record has this id.', retryable: false };
    },

    pull(query) {
      const [feed, position, scope = 'all'] = (query.get('after') || self.cursor(0)).split(':');
      const reset = { server_time: '', records: [], removed: [], cursor: '', more: true, reset: true };
      if (feed !== self.feed) return { ...reset, restored: true };
      if (scope !== self.scope) return { ...reset, restored: false };
      const rest = self.records.filter(record => record.position > Number(position) && !self.hides(record));
      const records = rest.slice(0, Math.min(page, Number(query.get('limit'))));
      const reached = records.at(-1)?.position ?? Number(position);
      const more = rest.length > records.length;
      const given = records.map(record => ({ ...record, receipt: receiptOf(record) }));
      return { server_time: '', records: given, removed: self.removed.splice(0), cursor: self.cursor(reached), more, reset: false, restored: false };
    },

    cursor: position => [self.feed, position, ...(self.scope === 'all' ? [] : [self.scope])].join(':'),
  };
  return self;
}

/** A push as it is without a parcel. */
async function opened(body) {
  if (!body?.parcel) return body;
  const { parcel, ...rest } = body;
  const records = await Promise.all(parcel.records.map(async record => ({ ...record, digest: await sha256(canonical(record.body)) })));
  if ((await sha256(records.map(record => record.digest).join(''))) !== parcel.digest) {
    throw new ServerFault(400, { code: 'parcel_differs', text: 'These are not the records of that digest.' });
  }
  return { ...rest, records };
}

const inItsOrder = (answer, parcel) => ({ ...answer, parcel, results: answer.results.map(({ id: _id, ...result }) => result) });

/** As the real one: of everything that makes the record this one, and of nothing that the server adds. */
const receiptOf = ({ id, author, device, recorded_at, digest }) => ['receipt', id, author, device, recorded_at, digest].join(' ');
