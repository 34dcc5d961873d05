/** How long the engine may take before it is held to have hung. Pure. */

const CALL_MS = 30_000;
/** The first page fetches and loads the drawing library. */
const PDF_MS = 120_000;
/** Ten thousand operations counted take the server 2.4 s, a slow phone about seven times that, and longer when something else was asked before. */
const COUNTING_MS = 120_000;
const COUNTING = new Set(['audit', 'audit_export', 'calibrate', 'outcomes', 'results', 'suggest']);

/** @param {string} name of a question at the desk */
export function callLimit_ms(name) {
  if (name.endsWith('_pdf')) return PDF_MS;
  return COUNTING.has(name) ? COUNTING_MS : CALL_MS;
}
