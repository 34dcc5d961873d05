/**
 * The engine's worker. It starts by itself, checks itself, and answers one request after another.
 *
 * It says `{state: 'checking'}`, then `{state: 'ready', cases}` or `{state: 'failed', why, text}`;
 * it takes `{id, request}` and gives `{id, answer}`, where `answer` is what the desk said: `{answer}` or `{faults}`.
 * `{id, crash}` means that the interpreter itself broke: the worker is of no more use.
 */
import { release } from '../shell/release.js';
import { startInterpreter } from './interpreter.js';

const { runtime, planner, pdf } = release.engine;
const needsPdf = (/** @type {string} */ ask) => ask.endsWith('_pdf');

/** @type {Promise<void> | undefined} */
let pdfReady;

const started = start();

addEventListener('message', async ({ data: { id, request } }) => {
  try {
    const engine = await started;
    if (needsPdf(request.ask)) await (pdfReady ??= loadPdf(engine));
    postMessage({ id, answer: JSON.parse(engine.answer(JSON.stringify(request))) });
  } catch (error) {
    postMessage({ id, crash: String(error) });
  }
});

started.then(check).catch((error) => postMessage({ state: 'failed', why: 'start', text: String(error) }));

async function start() {
  const { loadPyodide } = await import(`${runtime.folder}pyodide.mjs`);
  return startInterpreter({ loadPyodide, folder: runtime.folder, planner: archive(planner) });
}

/** @param {import('./interpreter.js').Interpreter} engine */
function check(engine) {
  postMessage({ state: 'checking' });
  const { answer, faults } = JSON.parse(engine.answer('{"ask": "self_test"}'));
  if (answer) postMessage({ state: 'ready', cases: answer.cases });
  else postMessage({ state: 'failed', why: 'self_test', text: faults[0].text });
}

/** @param {import('./interpreter.js').Interpreter} engine */
async function loadPdf(engine) {
  engine.unpack(await archive(pdf));
}

/** @param {import('../shell/release.js').Bundle} bundle */
async function archive({ folder, files }) {
  const name = files.find((file) => file.endsWith('.zip'));
  const response = await fetch(`${folder}${name}`);
  if (!response.ok) throw new Error(`${name}: ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
}
