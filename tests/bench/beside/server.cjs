// Serves PouchDB to a browser and takes what it replicates: node server.cjs PORT FOLDER, where the packages are installed.
const path = require('node:path');
const { createRequire } = require('node:module');

const [port, folder] = process.argv.slice(2);
const installed = createRequire(path.join(folder, 'package.json'));
const express = installed('express');
const PouchDB = installed('pouchdb').defaults({ prefix: `${path.join(folder, 'data')}/` });

const app = express();
const page = '<!doctype html><title>beside</title><script src="/pouchdb.js"></script>';
app.get('/', (_, response) => response.type('html').send(page));
app.get('/pouchdb.js', (_, response) => response.sendFile(installed.resolve('pouchdb/dist/pouchdb.min.js')));
app.use(
  '/db',
  installed('express-pouchdb')(PouchDB, {
    mode: 'minimumForPouchDB',
    inMemoryConfig: true,
    logPath: path.join(folder, 'log.txt'),
  }),
);
app.listen(Number(port), '127.0.0.1');
