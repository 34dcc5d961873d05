/** What the app's doors need of a page, in Node: events, a document, storage of the tab, and `fetch` to an invented clinic. */
import { gunzipSync } from 'node:zlib';
import './phone.mjs';
import { ServerFault } from '../../../static/app/session/server.js';
import { CLINIC } from './phone.mjs';
import { clinic } from './clinic.mjs';

const events = new EventTarget();
globalThis.addEventListener = events.addEventListener.bind(events);
globalThis.removeEventListener = events.removeEventListener.bind(events);
globalThis.document = Object.assign(new EventTarget(), { visibilityState: 'visible', cookie: '' });

// In Node a far timer would keep the test from ending, as a page's does not.
const { setTimeout: once, setInterval: every } = globalThis;
globalThis.setTimeout = (work, wait_ms, ...more) => {
  const timer = once(work, wait_ms, ...more);
  return wait_ms > 5000 ? timer.unref() : timer;
};
globalThis.setInterval = (...given) => every(...given).unref();

/** The clinic behind `fetch`. `online` false: no network. `who`: whose session the browser holds. */
export const site = Object.assign(clinic({ username: null }), { online: true, who: null, ahead_s: 0 });

export const happen = name => events.dispatchEvent(new Event(name));

globalThis.fetch = async (path, { method, body, headers }) => {
  if (!site.online) throw new TypeError('Failed to fetch');
  try {
    return Response.json(await answer(method, path, body ? JSON.parse(unpacked(body, headers)) : undefined));
  } catch (error) {
    if (!(error instanceof ServerFault)) throw error;
    if (error.status === 0) throw new TypeError('Failed to fetch');
    return Response.json({ errors: [{ code: error.code, text: error.text }] }, { status: error.status });
  }
};

async function answer(method, path, body) {
  if (path.endsWith('/session')) {
    if (method === 'POST' && site.closed.has(body.device.id)) throw new ServerFault(403, { code: 'device_closed', text: 'Closed.' });
    if (method === 'POST') site.who = body.username;
    if (method === 'DELETE') site.who = null;
    return {
      csrf_token: 't', server_time: serverTime(), minimum_client: site.minimum_client,
      user: site.who && { username: site.who, full_name: site.who },
      clinics: site.who ? [{ id: CLINIC, name: 'Harbour Clinic', role: 'surgeon' }] : [],
    };
  }
  if (!site.who) throw new ServerFault(401, { code: 'not_authenticated', text: 'Sign in first.' });
  site.username = site.who;
  return { ...(await site.call(method, path, { body })), server_time: serverTime() };
}

const unpacked = (body, headers) => (headers['Content-Encoding'] ? gunzipSync(body).toString() : body);

function serverTime() {
  return new Date(Date.now() - site.ahead_s * 1000).toISOString();
}
