/**
 * The engine, as the app sees it: `ask(name, payload)` resolves to the desk's answer or rejects with `Refused`.
 *
 * `startEngine()` is called when the app opens, so that the engine is warm before the first reading is typed;
 * after a failed start it tries again.
 */
import { callLimit_ms } from './limits.js';
import { createMessenger } from './messenger.js';

export { Refused } from './refused.js';

/** A first start fetches the engine, on a slow network too. */
const START_LIMIT_MS = 180_000;

const messenger = createMessenger({
  spawn: () => new Worker(new URL('./worker.js', import.meta.url), { type: 'module', name: 'engine' }),
  startLimit_ms: START_LIMIT_MS,
  callLimit_ms,
});

export const ask = messenger.ask;
export const startEngine = messenger.start;
export const engineState = messenger.state;
