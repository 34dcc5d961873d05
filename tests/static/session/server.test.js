import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gunzipSync } from 'node:zlib';
import { connect, ServerFault } from '../../../static/app/session/server.js';

const hello = (token, username = 'noor') => ({ csrf_token: token, server_time: '2026-11-25T10:00:00Z', minimum_client: 1, user: username && { username }, clinics: [] });
const json = (status, value, headers = {}) => new Response(JSON.stringify(value), { status, headers });

/** Answers in turn; what was asked is kept. */
function script(...answers) {
  const asked = [];
  const fetch = async (path, init) => {
    asked.push({ path, ...init });
    const answer = answers.shift();
    if (answer instanceof Error) throw answer;
    return answer;
  };
  return { fetch, asked };
}

test('a write carries the token of a greeting, the app protocol and its body', async () => {
  const { fetch, asked } = script(json(200, hello('t1')), json(200, { ok: true }), json(200, { ok: true }));
  const server = connect({ fetch });
  assert.deepEqual(await server.call('POST', '/x', { body: { a: 1 } }), { ok: true });
  await server.call('POST', '/y');
  assert.deepEqual(asked.map(({ method, path }) => `${method} ${path}`), ['GET /api/v1/session', 'POST /x', 'POST /y']);
  assert.deepEqual([asked[1].headers['X-CSRFToken'], asked[1].headers['X-Client'], asked[1].body], ['t1', '1', '{"a":1}']);
});

test('a write refused for its token is tried once more with a fresh one', async () => {
  const refused = () => json(403, { errors: [{ code: 'csrf_failed', text: 'Old page.' }] });
  const { fetch, asked } = script(json(200, hello('t1')), refused(), json(200, hello('t2')), json(200, { ok: true }));
  await connect({ fetch }).call('POST', '/x');
  assert.equal(asked[3].headers['X-CSRFToken'], 't2');

  const again = script(json(200, hello('t1')), refused(), json(200, hello('t2')), refused());
  await assert.rejects(connect({ fetch: again.fetch }).call('POST', '/x'), { status: 403, code: 'csrf_failed' });
});

test('but not in the session of somebody else', async () => {
  const { fetch, asked } = script(json(200, hello('t1')), json(403, { errors: [{ code: 'csrf_failed', text: '' }] }), json(200, hello('t2', 'tomas')));
  await assert.rejects(connect({ fetch }).call('POST', '/x'), { status: 401, code: 'not_authenticated' });
  assert.equal(asked.length, 3);
});

test("the server's errors arrive as facts", async () => {
  const error = { code: 'bad_body', text: 'No.', field: 'records.0', value: 3, allowed: 'one to two' };
  const { fetch } = script(json(400, { errors: [error] }));
  await assert.rejects(connect({ fetch }).call('GET', '/x'), fault => {
    assert.ok(fault instanceof ServerFault);
    const { code, text, field, value, allowed, status, retryable } = fault;
    assert.deepEqual({ code, text, field, value, allowed, status, retryable }, { ...error, status: 400, retryable: false });
    return true;
  });
});

test('a server that is busy says for how long', async () => {
  const { fetch } = script(json(429, { errors: [{ code: 'throttled', text: 'Wait.' }] }, { 'Retry-After': '17' }));
  await assert.rejects(connect({ fetch }).call('GET', '/x'), { status: 429, retryAfter_s: 17, retryable: true });
});

for (const [what, answer] of [
  ['no network', new TypeError('Failed to fetch')],
  ['a time-out', new DOMException('late', 'TimeoutError')],
  ["a hotel's sign-in page", new Response('<html>Welcome</html>', { status: 200 })],
]) {
  test(`${what} is unreachable, and worth another try`, async () => {
    const { fetch } = script(answer);
    await assert.rejects(connect({ fetch }).call('GET', '/x'), { code: 'unreachable', status: 0, retryable: true });
  });
}

test("a proxy's error page has the status as its code", async () => {
  const { fetch } = script(new Response('<html>Bad gateway</html>', { status: 502 }));
  await assert.rejects(connect({ fetch }).call('GET', '/x'), { code: 'http_502', retryable: true });
});

test("the server's clock is handed on with the moments of the call", async () => {
  const heard = [];
  await connect({ fetch: script(json(200, hello('t'))).fetch, onHeard: each => heard.push(each) }).greet();
  assert.equal(heard[0].serverTime, '2026-11-25T10:00:00Z');
  assert.ok(heard[0].sentAt <= heard[0].receivedAt);
});

const LARGE = { records: Array.from({ length: 40 }, (_, count) => ({ id: `record ${count}`, body: 'esotropia at distance' })) };

test('a large body goes compressed, and says so; a small one is not worth it', async () => {
  const { fetch, asked } = script(json(200, hello('t1')), json(200, { ok: true }), json(200, { ok: true }));
  const server = connect({ fetch });
  await server.call('POST', '/x', { body: LARGE });
  await server.call('POST', '/x', { body: { a: 1 } });
  assert.equal(asked[1].headers['Content-Encoding'], 'gzip');
  assert.ok(asked[1].body.byteLength < JSON.stringify(LARGE).length / 4);
  assert.deepEqual(JSON.parse(gunzipSync(asked[1].body).toString()), LARGE);
  assert.deepEqual([asked[2].headers['Content-Encoding'], asked[2].body], [undefined, '{"a":1}']);
});

test('where something on the way spoils compressed bodies, they go plain from then on', async () => {
  const { fetch, asked } = script(
    json(200, hello('t1')), json(415, { errors: [{ code: 'encoding_unknown', text: '' }] }), json(200, { ok: true }), json(200, { ok: true }),
  );
  const server = connect({ fetch });
  for (const _ of [1, 2]) assert.deepEqual(await server.call('POST', '/x', { body: LARGE }), { ok: true });
  assert.deepEqual(asked.slice(1).map(({ headers }) => headers['Content-Encoding']), ['gzip', undefined, undefined]);
  assert.deepEqual(JSON.parse(asked[3].body), LARGE);
});

test('any other refusal of a compressed body is no reason to send it twice', async () => {
  const { fetch, asked } = script(json(200, hello('t1')), json(413, { errors: [{ code: 'body_too_large', text: '' }] }));
  await assert.rejects(connect({ fetch }).call('POST', '/x', { body: LARGE }), { code: 'body_too_large' });
  assert.equal(asked.length, 2);
});

test('a browser that cannot compress sends plain bodies', async t => {
  const { CompressionStream } = globalThis;
  delete globalThis.CompressionStream;
  t.after(() => Object.assign(globalThis, { CompressionStream }));
  const { fetch, asked } = script(json(200, hello('t1')), json(200, { ok: true }));
  await connect({ fetch }).call('POST', '/x', { body: LARGE });
  assert.deepEqual(JSON.parse(asked[1].body), LARGE);
});
