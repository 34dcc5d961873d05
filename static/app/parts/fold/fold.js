/** Something optional, folded under its name; what it holds stands beside the name, so nothing hides what was said. */
import { html } from '../../vendor/preact.js';

/**
 * @param {object} props
 * @param {string} props.title
 * @param {string} props.holds what is in it, in a few words
 * @param {boolean} [props.open] unfolded from the start
 * @param {unknown} props.children
 */
export function Fold({ title, holds, open = false, children }) {
  return html`<details class="fold" open=${open}>
    <summary class="fold-summary">
      <span class="fold-title">${title}</span>
      <span class="fold-holds">${holds}</span>
    </summary>
    <div class="fold-body">${children}</div>
  </details>`;
}
