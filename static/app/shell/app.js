/** The screen of the present route; the person is led through sign-in, secret and unlock, and back to where they were. */
import { useObservable } from '../observable.js';
import { screens } from '../screens/index.js';
import { session } from '../session/session.js';
import { storageState } from '../store/protection.js';
import { Component, html, useEffect, useState } from '../vendor/preact.js';
import { gate, isInside } from './gate.js';
import { go, match, route } from './router.js';

const MISSING = { path: '', load: async () => ({ default: Missing }) };

/** Kept when a door came in between. @type {string | undefined} */
let wanted;

export function App() {
  const path = useObservable(route);
  const { phase, login } = useObservable(session);
  const target = gate({ phase, login }, path, wanted);

  useEffect(() => {
    if (phase === 'starting') return;
    if (isInside(path) && target !== path) wanted = path;
    else if (phase === 'open') wanted = undefined;
    if (target !== path) go(target, { replace: true });
  }, [path, target, phase]);

  if (phase === 'starting') return html`<${Starting} />`;
  if (target !== path) return null;
  return html`<${Guarded} key=${path}><${Shown} path=${path} /><//>`;
}

/** @param {{path: string}} props */
function Shown({ path }) {
  const [screen, setScreen] = useState(/** @type {{Screen: any} | {error: unknown} | null} */ (null));
  const { entry, parts } = find(path);

  useEffect(() => {
    let gone = false;
    entry.load().then(
      module => gone || setScreen({ Screen: module.default }),
      error => gone || setScreen({ error }),
    );
    return () => {
      gone = true;
    };
  }, []);

  if (!screen) return null;
  if ('error' in screen) return html`<${Broken} error=${screen.error} />`;
  return html`<${screen.Screen} ...${parts} />`;
}

/** @param {string} path */
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
