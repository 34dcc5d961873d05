/** The screen of the present route; the person is led through sign-in, secret and unlock, and back to where they were. */
import { useObservable } from '../observable.js';
import { screens } from '../screens/index.js';
import { session } from '../session/session.js';
import { storageState } from '../store/protection.js';
import { Component, html, useEffect, useState } from '../vendor/preact.js';
import { language, speakHere } from '../words/say.js';
import { gate, isInside } from './gate.js';
import { go, match, route } from './router.js';

/** @typedef {{path: string, spoken?: boolean, load: () => Promise<{default: (props: any) => any}>}} Entry */

/** @type {Entry} */
const MISSING = { path: '', load: async () => ({ default: Missing }) };

/** Screens whose modules are read. @type {Map<Entry, (props: any) => any>} */
const opened = new Map();
let warm = false;

/** Kept when a door came in between. @type {string | undefined} */
let wanted;

export function App() {
  const path = useObservable(route);
  const { phase, login } = useObservable(session);
  const target = gate({ phase, login }, path, wanted);
  const spoken = useObservable(language);

  useEffect(() => {
    if (phase === 'starting') return;
    if (isInside(path) && target !== path) wanted = path;
    else if (phase === 'open') wanted = undefined;
    if (target !== path) go(target, { replace: true });
  }, [path, target, phase]);

  if (phase === 'starting') return html`<${Starting} />`;
  if (target !== path) return null;
  return html`<${Guarded} key=${`${spoken} ${path}`}><${Shown} path=${path} /><//>`;
}

/** @param {{path: string}} props */
function Shown({ path }) {
  const { entry, parts } = find(path);
  const [Screen, setScreen] = useState(() => opened.get(entry));
  const [error, setError] = useState(/** @type {unknown} */ (null));

  useEffect(() => {
    if (!Screen) open(entry).then(found => setScreen(() => found), setError);
    else warmUp();
  }, [Screen]);

  speakHere(entry.spoken ?? false);
  if (error) return html`<${Broken} error=${error} />`;
  return Screen ? html`<${Screen} ...${parts} />` : null;
}

/** @param {Entry} entry */
async function open(entry) {
  const { default: Screen } = await entry.load();
  opened.set(entry, Screen);
  return Screen;
}

/** When a first screen stands and the phone has nothing to do, the others are read too: each then opens without a blank. */
function warmUp() {
  if (warm) return;
  warm = true;
  const later = globalThis.requestIdleCallback ?? setTimeout;
  later(() => screens.forEach(entry => open(entry).catch(() => {})));
}

/**
 * @param {string} path
 * @returns {{entry: Entry, parts: Record<string, string>}}
 */
function find(path) {
  for (const entry of screens) {
    const parts = match(entry.path, path);
    if (parts) return { entry, parts };
  }
  return { entry: MISSING, parts: {} };
}

/** A fault in one screen leaves the others usable. */
class Guarded extends Component {
  /** @param {unknown} error */
  componentDidCatch(error) {
    console.error(error);
    this.setState({ error });
  }

  render() {
    const { error } = /** @type {any} */ (this.state);
    return error ? html`<${Broken} error=${error} />` : /** @type {any} */ (this.props).children;
  }
}

function Starting() {
  const { problem } = useObservable(storageState);
  if (!problem) return null;
  return html`<main class="stack">
    <h1>Primary Position cannot open its storage</h1>
    <p role="alert">${problem.text}</p>
    <button type="button" class="button" onClick=${() => location.reload()}>Load again</button>
  </main>`;
}

/** @param {{error: any}} props */
function Broken({ error }) {
  return html`<main class="stack">
    <h1>This screen stopped</h1>
    <p role="alert">What was saved is safe on this phone. What was typed is kept as a draft.</p>
    <p><code>${error?.message ?? String(error)}</code></p>
    <button type="button" class="button" onClick=${() => location.reload()}>Load again</button>
    <a class="button" href="#/patients">Patients</a>
  </main>`;
}

function Missing() {
  return html`<main class="stack">
    <h1>There is nothing here</h1>
    <a class="button" href="#/patients">Patients</a>
  </main>`;
}
