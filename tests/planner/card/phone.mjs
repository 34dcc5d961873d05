/**
 * The desk on the phone's own engine: answers each request of a JSON file, as a JSON list of texts.
 *
 *     node phone.mjs RUNTIME_FOLDER PLANNER_ZIP PDF_ZIP REQUESTS_JSON
 */

import { readFile } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { startInterpreter } from '../../../static/app/engine/interpreter.js';

const [folder, planner, pdf, requests] = process.argv.slice(2);
const archive = async (path) => new Uint8Array(await readFile(path));

const { loadPyodide } = await import(pathToFileURL(`${folder}/pyodide.mjs`).href);
const engine = await startInterpreter({ loadPyodide, folder: `${folder}/`, planner: archive(planner) });
engine.unpack(await archive(pdf));

const answers = JSON.parse(await readFile(requests, 'utf8')).map((request) => engine.answer(request));
process.stdout.write(`\n${JSON.stringify(answers)}\n`);
