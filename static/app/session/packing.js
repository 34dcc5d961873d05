/** Bodies made small for a slow link: gzip, where the browser can and it is worth the time. */

/** Below this many letters the envelope of the request weighs more than what would be saved. */
const WORTH_LETTERS = 1_500;

/**
 * @param {string} text
 * @returns {Promise<{body: string | ArrayBuffer, encoding: 'gzip' | null}>}
 */
export async function packed(text) {
  if (text.length < WORTH_LETTERS || !('CompressionStream' in globalThis)) return { body: text, encoding: null };
  const { readable, writable } = new CompressionStream('gzip');
  const writer = writable.getWriter();
  const written = Promise.all([writer.write(new TextEncoder().encode(text)), writer.close()]);
  const body = await new Response(readable).arrayBuffer();
  await written;
  return { body, encoding: 'gzip' };
}
