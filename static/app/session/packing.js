/** Bodies made small for a slow link: gzip, where the browser can and it is worth the time. */

/** Below this many letters the envelope of the request weighs more than what would be saved. */
const WORTH_LETTERS = 1_500;

/**
 * @param {string} text
 * @returns {Promise<{body: string | ArrayBuffer, encoding: 'gzip' | null}>}
 */
export async function packed(text) {
  if (text.length < WORTH_LETTERS || !('CompressionStream' in globalThis)) return { body: text, encoding: null };
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('gzip'));
  return { body: await new Response(stream).arrayBuffer(), encoding: 'gzip' };
}
