/** Starts the app: what is on this phone first, the engine and the network beside it. */
import { startEngine } from './engine/engine.js';
import { startKeepingCardKeys } from './planning/card-keys.js';
import { startKeepingCards } from './planning/kept-cards.js';
import { openSession, session } from './session/session.js';
import { App } from './shell/app.js';
import { startKeys } from './shell/keys.js';
import { startRouter } from './shell/router.js';
import { applyTheme } from './shell/theme.js';
import { beforeReload, startUpdates } from './shell/update.js';
import { noteStorage, recallProtection, storageState } from './store/protection.js';
import { device, drafts, ledger } from './store/store.js';
import { startSync } from './sync/sync.js';
import { html, render } from './vendor/preact.js';
import { startLanguage } from './words/say.js';

/** A phone whose storage stays dead must not load the page again and again. */
const RELOAD_REST_MS = 60_000;

applyTheme();
const root = /** @type {HTMLElement} */ (document.getElementById('app'));

if (isSecureContext) start();
else render(html`<${Insecure} />`, root);

function start() {
  startRouter();
  startKeys();
  startLanguage().then(() => render(html`<${App} />`, root));
  startSync();
  openSession().catch(noteFault);
  recallProtection(device).catch(noteFault);
  startEngine();
  startKeepingCards();
  startKeepingCardKeys();
  startUpdates();
  beforeReload(drafts.flush);
  addEventListener('pagehide', keepDrafts);
  document.addEventListener('visibilitychange', () => (document.visibilityState === 'hidden' ? keepDrafts() : checkStorage()));
  storageState.subscribe(reloadOnce);
}

function keepDrafts() {
  drafts.flush().catch(noteFault);
}

/** Phones drop the connection to the storage while the app is in the background. */
function checkStorage() {
  if (session.get().phase === 'open') ledger.get()?.check().catch(noteFault);
}

/**
 * A connection that stays dead after a second try comes back only with a fresh page; drafts are in this tab's stash.
 *
 * @param {import('./store/protection.js').StorageState} state
 */
function reloadOnce({ problem }) {
  const last = Number(sessionStorage.getItem('reloaded'));
  if (problem?.code !== 'storage_lost' || Date.now() - last < RELOAD_REST_MS) return;
  sessionStorage.setItem('reloaded', String(Date.now()));
  drafts.flush().catch(() => {}).finally(() => location.reload());
}

/** @param {any} fault */
function noteFault(fault) {
  console.error(fault);
  noteStorage({ problem: { code: fault.code ?? 'storage_failed', text: fault.text ?? 'This phone could not open its storage.' } });
}

function Insecure() {
  return html`<main class="stack">
    <h1>This address is not secure</h1>
    <p role="alert">Patient data is sealed on this phone, and browsers allow that over HTTPS only. Open the address that starts with https.</p>
  </main>`;
}
