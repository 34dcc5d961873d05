/** The text of the QR code in a picture, by a decoder that every browser can run. */

/** A frame wider than this costs time and shows the code no better. */
const WIDEST = 1600;

/**
 * @param {CanvasImageSource} source
 * @param {{width: number, height: number}} size of it
 * @returns {Promise<string | null>} null where there is none
 */
export async function decode(source, { width, height }) {
  if (!width || !height) return null;
  const { default: jsQR } = await import('../../vendor/jsqr.js');
  const share = Math.min(1, WIDEST / Math.max(width, height));
  const canvas = Object.assign(document.createElement('canvas'), { width: Math.round(width * share), height: Math.round(height * share) });
  const ink = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d', { willReadFrequently: true }));
  ink.drawImage(source, 0, 0, canvas.width, canvas.height);
  const { data } = ink.getImageData(0, 0, canvas.width, canvas.height);
  return jsQR(data, canvas.width, canvas.height, { inversionAttempts: 'dontInvert' })?.data || null;
}

/** @param {Blob} file a photograph or a scan of the paper */
export async function decodeFile(file) {
  const image = await createImageBitmap(file);
  const found = await decode(image, image);
  image.close();
  return found;
}
