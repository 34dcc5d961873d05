/** Asks the engine whether a body is a valid one, without letting a slow or broken engine stand in the way of saving. */
import { ask as askEngine } from '../../engine/engine.js';

/** So long a save waits for an engine that is still starting. */
const PATIENCE_MS = 2500;

/**
 * @param {string} kind
 * @param {object} body
 * @param {{ask?: typeof askEngine, patience_ms?: number}} [how]
 * @returns {Promise<{faults: import('./form.js').FieldFault[], checked: boolean}>} `checked` is false when the engine gave no answer
 *   in time; the clinic's server checks every record again
 */
export async function checkBody(kind, body, { ask = askEngine, patience_ms = PATIENCE_MS } = {}) {
  let timer;
  const patience = new Promise((resolve) => {
    timer = setTimeout(() => resolve({ faults: [], checked: false }), patience_ms);
  });
  const answer = ask('check', { kind, body }).then(
    () => ({ faults: [], checked: true }),
    (refused) => (refused.faults.some(isEnginesOwn) ? { faults: [], checked: false } : { faults: refused.faults, checked: true }),
  );
  try {
    return await Promise.race([answer, patience]);
  } finally {
    clearTimeout(timer);
  }
}

/** The engine failed, rather than the body. @param {{code: string}} fault */
function isEnginesOwn({ code }) {
  return code.startsWith('engine_');
}
