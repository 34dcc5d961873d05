/**
 * @param {number} bytes
 * @returns {string} `340 kB`, `15 MB`, `2.1 GB`; decimal units
 */
export function sizeWords(bytes) {
  if (bytes < 1e6) return `${Math.round(bytes / 1e3)} kB`;
  if (bytes < 1e9) return `${Math.round(bytes / 1e6)} MB`;
  return `${(bytes / 1e9).toFixed(1)} GB`;
}
