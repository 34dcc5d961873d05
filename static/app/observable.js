/**
 * A value that can be watched: the only reactive thing in the app.
 *
 *     const count = observable(0);
 *     const stop = count.subscribe(value => ...);   // called after each change, not at once
 *     count.set(count.get() + 1);
 *     function Counter() { return html`<p>${useObservable(count)}</p>`; }
 */
import { useEffect, useReducer } from './vendor/preact.js';

/**
 * @template T
 * @typedef {object} Observable
 * @property {() => T} get
 * @property {(value: T) => void} set  Tells the subscribers unless the value is the same (Object.is).
 * @property {(listener: (value: T) => void) => () => void} subscribe  Returns how to stop.
 */

/**
 * @template T
 * @param {T} value
 * @returns {Observable<T>}
 */
export function observable(value) {
  /** @type {Set<(value: T) => void>} */
  const listeners = new Set();
  return {
    get: () => value,
    set(next) {
      if (Object.is(next, value)) return;
      value = next;
      for (const listener of [...listeners]) listener(value);
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
}

/**
 * The value inside a component, which is drawn again when it changes.
 *
 * @template T
 * @param {Observable<T>} source
 * @returns {T}
 */
export function useObservable(source) {
  const [, redraw] = useReducer((/** @type {number} */ count) => count + 1, 0);
  const drawn = source.get();
  useEffect(() => {
    const stop = source.subscribe(() => redraw(0));
    if (!Object.is(source.get(), drawn)) redraw(0);
    return stop;
  }, [source]);
  return drawn;
}
