/**
 * An invented server: it keeps the protocol of DEVELOPERS.md, and misbehaves when told to. `before` and `after` may throw to
 * lose a request or a reply.
 */
import { canonical } from '../../../static/app/store/canonical.js';
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
    before: () => {},
    after: () => {},
    judge: () => null,

    async greet() {
      self.calls.push('GET session');
      self.hello = { csrf_token: 't', user: self.username && { username: self.username }, minimum_client: self.minimum_client, clinics: [] };
      return self.hello;
    },
    lastHello: () => self.hello ?? null,

    async call(method, path, { body } = {}) {
      const what = path.includes('/push') ? 'push' : 'pull';
      self.calls.push(what);
      self.before(what, body, path);
      const answer = what === 'push' ? self.push(body) : self.pull(new URL(path, 'http://clinic').searchParams);
      self.after(what, answer);
      return structuredClone(answer);
    },

    push({ records }) {
      return { server_time: new Date().toISOString(), results: records.map(record => self.receive(structuredClone(record))) };
    },

    receive(record) {
      const refusal = self.judge(record);
      if (refusal) return { id: record.id, status: 'rejected', retryable: false, ...refusal };
      const known = self.records.find(each => each.id === record.id);
      if (!known) {
        const stored = { ...record, position: self.records.length + 1, received_at: new Date().toISOString() };
        self.records.push(stored);
        return { id: record.id, status: 'accepted', position: stored.position, received_at: stored.received_at };
      }
      const { position, received_at, ...before } = known;
      if (canonical(before) === canonical(record)) return { id: record.id, status: 'duplicate', position, received_at };
      return { id: record.id, status: 'rejected', code: 'id_taken', text: 'Another record has this id.', retryable: false };
    },

    pull(query) {
      const [feed, position] = (query.get('after') || `${self.feed}:0`).split(':');
      if (feed !== self.feed) return { server_time: '', records: [], cursor: `${self.feed}:0`, more: false, reset: true };
      const rest = self.records.filter(record => record.position > Number(position));
      const records = rest.slice(0, Math.min(page, Number(query.get('limit'))));
      const last = records.at(-1)?.position ?? Number(position);
      return { server_time: '', records, cursor: `${self.feed}:${last}`, more: rest.length > records.length, reset: false };
    },
  };
  return self;
}
