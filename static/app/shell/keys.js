/** The Escape key is the way back, unless something on the screen (a sheet, a menu, a field with text selected) took it first. */
import { back } from './router.js';

export function startKeys() {
  addEventListener('keydown', event => {
    if (event.key !== 'Escape' || event.defaultPrevented || event.isComposing) return;
    if (document.querySelector('dialog[open]')) return;
    back();
  });
}
