// Compiles archives of Python source with the Python that will run them.
// node compile.mjs FOLDER_OF_PYODIDE SOURCE.zip COMPILED.zip [SOURCE.zip COMPILED.zip ...]

import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join, sep } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

// Node would quote the line it stumbled over, which here is a megabyte long.
process.on("uncaughtException", (error) => {
  console.error(error.message);
  process.exit(1);
});

const [pyodideFolder, ...pairs] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(join(pyodideFolder, "pyodide.mjs")).href);
const python = await loadPyodide({ indexURL: pyodideFolder + sep });

python.runPython(readFileSync(join(dirname(fileURLToPath(import.meta.url)), "precompile.py"), "utf8"));
const precompile = python.globals.get("precompile");
for (let i = 0; i < pairs.length; i += 2) {
  python.FS.writeFile("/source.zip", new Uint8Array(readFileSync(pairs[i])));
  precompile("/source.zip", "/compiled.zip");
  writeFileSync(pairs[i + 1], python.FS.readFile("/compiled.zip"));
}
