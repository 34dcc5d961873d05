/**
 * @param {ArrayBuffer | Uint8Array} bytes
 * @returns {string}  two lower-case hexadecimal digits a byte
 */
export function hex(bytes) {
  return Array.from(new Uint8Array(bytes), byte => byte.toString(16).padStart(2, '0')).join('');
}
