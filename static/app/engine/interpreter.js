/**
 * Python with the planner in it, in whichever place runs this: the engine's worker, or Node in the parity tests.
 *
 *     const engine = await startInterpreter({ loadPyodide, folder, planner });
 *     engine.answer('{"ask": "about"}')   // the desk's own JSON text
 *     engine.unpack(archive)              // adds packages, such as ReportLab's
 */

/** Where Python looks for packages. */
const PACKAGES = '/lib/planner';

/**
 * @typedef {object} Interpreter
 * @property {(request: string) => string} answer
 * @property {(archive: Uint8Array) => void} unpack
 */

/**
 * @param {object} parts
 * @param {typeof import('pyodide').loadPyodide} parts.loadPyodide
 * @param {string} parts.folder  the runtime's folder, with a slash at its end
 * @param {Promise<Uint8Array>} parts.planner  the planner's archive
 * @returns {Promise<Interpreter>}
 */
export async function startInterpreter({ loadPyodide, folder, planner }) {
  const [python, archive] = await Promise.all([loadPyodide({ indexURL: folder }), planner]);
  const unpack = (/** @type {Uint8Array} */ packed) => python.unpackArchive(packed, 'zip', { extractDir: PACKAGES });
  unpack(archive);
  python.runPython(`import sys; sys.path.insert(0, ${JSON.stringify(PACKAGES)})`);
  const desk = python.pyimport('quick_start').desk();
  return { answer: (request) => desk.answer(request), unpack };
}
