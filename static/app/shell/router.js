/**
 * Hash routes: `#/patients/ID` is the path `/patients/ID`.
 *
 *     go('/patients')                    a new step that back() undoes
 *     go('/patients', {replace: true})   in place of this step
 *     back()                             the step before, or the screen above if this is the first one
 *     route                              observable of the path
 *     match('/patients/:id', path)       {id: '...'} or null
 */
import { observable } from '../observable.js';

/** @type {import('../observable.js').Observable<string>} */
export const route = observable(here());

/** How many steps of this app lie behind the present one; kept in the history entry, so that a reload keeps it. */
let depth = 0;

/** Listens to the browser; called once when the app starts. */
export function startRouter() {
  arrive();
  addEventListener('popstate', arrive);
  addEventListener('hashchange', arrive);
}

/**
 * @param {string} path  with or without `#`
 * @param {{replace?: boolean}} [how]
 */
export function go(path, { replace = false } = {}) {
  const hash = path.startsWith('#') ? path : `#${path}`;
  if (hash === location.hash) return;
  if (!replace) depth += 1;
  history[replace ? 'replaceState' : 'pushState']({ depth }, '', hash);
  route.set(here());
}

export function back() {
  if (depth > 0) history.back();
  else go(above(route.get()), { replace: true });
}

/**
 * The screen above a path, for a person who came to it directly.
 *
 * @param {string} path
 */
export function above(path) {
  const steps = path.split('/').filter(Boolean);
  if (steps.length <= 2) return '/patients';
  return `/${steps.slice(0, steps.length <= 4 ? 2 : 4).join('/')}`;
}

/**
 * @param {string} pattern  e.g. `/patients/:id`
 * @param {string} path
 * @returns {Record<string, string> | null}  the named parts, decoded
 */
export function match(pattern, path) {
  const wanted = pattern.split('/');
  const given = path.split('/');
  if (wanted.length !== given.length) return null;
  /** @type {Record<string, string>} */
  const parts = {};
  for (const [index, step] of wanted.entries()) {
    if (step.startsWith(':')) {
      if (!given[index]) return null;
      parts[step.slice(1)] = decoded(given[index]);
    } else if (step !== given[index]) return null;
  }
  return parts;
}

/** @param {string} text  as a person may have typed it into the address bar */
function decoded(text) {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

function arrive() {
  // A followed link makes an entry without our state: it is one step further.
  if (typeof history.state?.depth === 'number') depth = history.state.depth;
  else {
    depth = route.get() === here() ? 0 : depth + 1;
    history.replaceState({ depth }, '');
  }
  route.set(here());
}

function here() {
  return globalThis.location?.hash.slice(1) || '/';
}
