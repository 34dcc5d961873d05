// Puts questions to the phone's engine, in Node, and writes down its answers, and how many sources it had to compile.
// node answers.mjs SITE RELEASE.json QUESTIONS.json ANSWERS.json   (both lists of JSON texts)

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { startInterpreter } from '../../static/app/engine/interpreter.js';

// Node would quote the line it stumbled over, which here is a megabyte long.
process.on('uncaughtException', (error) => {
  console.error(error.message);
  process.exit(1);
});

const [site, releaseFile, questionsFile, answersFile] = process.argv.slice(2);
const { engine } = JSON.parse(readFileSync(releaseFile, 'utf8'));
const place = (url) => join(site, ...url.split('/'));
const archive = (urls) => new Uint8Array(readFileSync(place(urls.find((url) => url.endsWith('.zip')))));

const loader = place(engine.runtime.find((url) => url.endsWith('/pyodide.mjs')));
const { loadPyodide } = await import(pathToFileURL(loader).href);
let python;
const engineOnPhone = await startInterpreter({
  loadPyodide: async (options) => (python = await loadPyodide(options)),
  folder: loader.slice(0, -'pyodide.mjs'.length),
  planner: Promise.resolve(archive(engine.planner)),
});
engineOnPhone.unpack(archive(engine.pdf));

const questions = JSON.parse(readFileSync(questionsFile, 'utf8'));
const answers = questions.map((question) => engineOnPhone.answer(question));
const compiled = python.runPython('len(__import__("quick_start").missed)');
writeFileSync(answersFile, JSON.stringify({ answers, compiled }));
