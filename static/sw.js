/**
 * Keeps the app on the phone, one whole release at a time.
 *
 * The server puts `self.RELEASE` in front of this file: the release's name, the URLs of its shell, and those of its engine.
 *
 * - The shell of a release lies in one cache, filled whole or not at all, before this worker counts as installed.
 * - Each bundle of the engine lies in a cache of its own, named by its content: a new release fetches only what changed.
 *   On the first visit the page asks for it (`keep`), so that it waits for nothing; a later release is not installed
 *   without its engine, so that taking it never costs a phone its calculations.
 * - A new release waits until a person takes it (`take over`). Pages of an older one keep their files until they close.
 * - The API never passes through here, and a file that is missing is missing: nothing else is given in its place.
 */

/**
 * @typedef {object} Release
 * @property {string} name
 * @property {string[]} shell
 * @property {Record<string, string[]>} engine
 */

const worker = /** @type {ServiceWorkerGlobalScope & {RELEASE: Release}} */ (/** @type {unknown} */ (self));
const release = worker.RELEASE;
const bundles = Object.values(release.engine);

const PAGE = '/';
const SHELL = 'shell ';
const ENGINE = 'engine ';
const ANSWER_MS = 2000;

worker.addEventListener('install', (event) => event.waitUntil(install()));
worker.addEventListener('activate', (event) => event.waitUntil(worker.clients.claim()));
worker.addEventListener('fetch', (event) => {
  const { method, mode, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== worker.location.origin || pathname.startsWith('/api/')) return;
  if (mode === 'navigate') event.respondWith(page(event.request, pathname));
  else if (/^\/(static|icons)\/|^\/manifest\.webmanifest$/.test(pathname)) event.respondWith(file(event.request));
});
worker.addEventListener('message', (event) => {
  const { data, ports } = event;
  if (data.ask === 'take over') event.waitUntil(worker.skipWaiting());
  if (data.ask === 'state') event.waitUntil(kept().then((state) => ports[0].postMessage(state)));
  if (data.ask === 'keep') event.waitUntil(keepEngine().then((state) => ports[0].postMessage(state)));
});

async function install() {
  try {
    await keepShell();
    if (worker.registration.active) await Promise.all(bundles.map(keepBundle));
  } catch (error) {
    await caches.delete(SHELL + release.name);
    throw error;
  }
}

async function keepShell() {
  const index = await fetch(PAGE, { cache: 'no-cache' });
  // A deployment in between would give the page of one release and the files of another.
  if (!(await index.clone().text()).includes(`/static/app/${release.name}/`)) throw new Error('The server has moved on.');
  const cache = await caches.open(SHELL + release.name);
  const unchanging = (/** @type {string} */ url) => url.startsWith('/static/');
  const files = release.shell.filter((url) => url !== PAGE);
  await cache.addAll(files.map((url) => new Request(url, { cache: unchanging(url) ? 'default' : 'no-cache' })));
  await cache.put(PAGE, index);
}

/**
 * @param {Request} request
 * @param {string} pathname
 */
async function page(request, pathname) {
  const mine = () => caches.match(PAGE, { cacheName: SHELL + release.name });
  if (pathname === PAGE) return (await mine()) ?? fetch(request);
  try {
    return await fetch(request);
  } catch (offline) {
    const index = await mine();
    if (!index) throw offline;
    return index;
  }
}

/** @param {Request} request */
async function file(request) {
  return (
    (await caches.match(request, { cacheName: SHELL + release.name })) ?? (await caches.match(request)) ?? fetch(request)
  );
}

/** Whether everything that the app needs without a network is on the phone. */
async function kept() {
  const whole = async (/** @type {string} */ name, /** @type {string[]} */ urls) => {
    if (!(await caches.has(name))) return false;
    const there = await Promise.all(urls.map((url) => caches.match(url, { cacheName: name })));
    return there.every(Boolean);
  };
  const engine = await Promise.all(bundles.map((urls) => whole(engineCache(urls), urls)));
  return { release: release.name, shell: await whole(SHELL + release.name, release.shell), engine: engine.every(Boolean) };
}

/** Fetches what is missing of this release, then takes away what no page needs any more. */
async function keepEngine() {
  const before = await kept();
  if (!before.shell) await keepShell().catch(() => {});
  for (const urls of bundles) await keepBundle(urls).catch(() => {});
  const after = await kept();
  if (after.shell && after.engine) await tidy();
  return after;
}

/** @param {string[]} urls */
async function keepBundle(urls) {
  const cache = await caches.open(engineCache(urls));
  const missing = await Promise.all(urls.map(async (url) => ((await cache.match(url)) ? [] : [url])));
  await cache.addAll(missing.flat());
}

async function tidy() {
  const { installing, waiting } = worker.registration;
  if (installing || waiting) return;
  const pages = await worker.clients.matchAll({ type: 'window' });
  const releases = await Promise.all(pages.map(releaseOf));
  if (releases.some((name) => name !== release.name)) return;
  const needed = new Set([SHELL + release.name, ...bundles.map(engineCache)]);
  const names = (await caches.keys()).filter((name) => name.startsWith(SHELL) || name.startsWith(ENGINE));
  await Promise.all(names.filter((name) => !needed.has(name)).map((name) => caches.delete(name)));
}

/**
 * @param {Client} client
 * @returns {Promise<string | null>}  the release of an open page, or null if it does not say
 */
function releaseOf(client) {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data.release);
    setTimeout(() => resolve(null), ANSWER_MS);
    client.postMessage({ ask: 'release' }, [port2]);
  });
}

/** @param {string[]} urls  of one bundle, all in one folder */
function engineCache(urls) {
  return ENGINE + urls[0].split('/')[3];
}
