/**
 * A panel at the bottom of the screen (beside the content on a tablet it is a centred panel). It is a modal dialog: focus
 * stays inside, Escape and a touch outside close it, and focus returns to where it came from.
 */
import { html, useEffect, useRef } from '../../vendor/preact.js';
import { Mark } from '../mark/mark.js';

/**
 * @param {object} props
 * @param {boolean} props.open
 * @param {string} props.title
 * @param {() => void} props.onClose
 * @param {unknown} props.children
 */
export function Sheet({ open, title, onClose, children }) {
  const dialog = useRef(/** @type {HTMLDialogElement | null} */ (null));

  useEffect(() => {
    if (open && !dialog.current?.open) dialog.current?.showModal();
    if (!open && dialog.current?.open) dialog.current.close();
  }, [open]);

  const closeFromOutside = (/** @type {MouseEvent} */ event) => event.target === dialog.current && onClose();

  return html`<dialog class="sheet" ref=${dialog} aria-label=${title} onClose=${onClose} onClick=${closeFromOutside}>
    ${open &&
    html`<div class="sheet-body">
      <div class="sheet-head">
        <h2>${title}</h2>
        <button type="button" class="button bare sheet-close" aria-label="Close" onClick=${onClose}><${Mark} name="close" /></button>
      </div>
      ${children}
    </div>`}
  </dialog>`;
}
