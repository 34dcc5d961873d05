/**
 * The app's QR decoder on grey pictures: prints the texts as a JSON list, null where it reads none.
 *
 *     node decode.mjs WIDTH HEIGHT FILE...   one byte a pixel
 */

import { readFile } from 'node:fs/promises';
import decoder from 'jsqr';

const jsQR = decoder.default ?? decoder;
const [width, height, ...files] = process.argv.slice(2);
const texts = [];
for (const file of files) {
  const grey = await readFile(file);
  const colours = new Uint8ClampedArray(grey.length * 4).fill(255);
  grey.forEach((value, at) => colours.fill(value, at * 4, at * 4 + 3));
  texts.push(jsQR(colours, Number(width), Number(height), { inversionAttempts: 'dontInvert' })?.data ?? null);
}
process.stdout.write(`\n${JSON.stringify(texts)}\n`);
