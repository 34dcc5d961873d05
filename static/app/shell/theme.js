/** Light, dark or as the device has it; remembered on this phone and written to `<html data-theme>`. */
import { observable } from '../observable.js';

/** @typedef {'device' | 'light' | 'dark'} Theme */

const KEY = 'theme';

/** @type {import('../observable.js').Observable<Theme>} */
export const theme = observable(remembered());

/** @param {Theme} choice */
export function setTheme(choice) {
  localStorage.setItem(KEY, choice);
  theme.set(choice);
  applyTheme();
}

/** Puts the choice on the page: `data-theme` is `light` or `dark`, and absent when the device decides. */
export function applyTheme() {
  const choice = theme.get();
  if (choice === 'device') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = choice;
}

/** @returns {Theme} */
function remembered() {
  const kept = globalThis.localStorage?.getItem(KEY);
  return kept === 'light' || kept === 'dark' ? kept : 'device';
}
