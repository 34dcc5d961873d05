/**
 * @param {ArrayBuffer | Uint8Array} bytes
 * @returns {string}  two lower-case hexadecimal digits a byte
 */
export function hex(bytes) {
  return Array.from(new Uint8Array(bytes), byte => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * @param {string} text  two hexadecimal digits a byte
 * @returns {Uint8Array}
 */
export function unhex(text) {
  return Uint8Array.from(text.match(/../g) ?? [], pair => parseInt(pair, 16));
}
