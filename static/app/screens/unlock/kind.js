/** Whether this phone is opened by digits or by letters, so that the fitting keyboard comes up. */

/** @typedef {'pin' | 'passphrase'} Kind */

const KEY = 'secret-kind';

/** @param {Kind} kind */
export function rememberKind(kind) {
  localStorage.setItem(KEY, kind);
}

/** @returns {Kind} */
export function rememberedKind() {
  return localStorage.getItem(KEY) === 'passphrase' ? 'passphrase' : 'pin';
}
