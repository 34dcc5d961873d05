/**
 * The app's own small signs. A sign repeats a word that stands beside it or in its label; it never stands for one.
 */
import { html } from '../../vendor/preact.js';

const DRAWINGS = {
  stop: html`<path d="M8.2 2.5h7.6l5.7 5.7v7.6l-5.7 5.7H8.2l-5.7-5.7V8.2z" fill="currentColor" /><path d="M7 12h10" class="cut" />`,
  caution: html`<path d="M12 3 22 20.5H2z" /><path d="M12 10v4.6M12 17.3v.4" />`,
  note: html`<circle cx="12" cy="12" r="9" /><path d="M12 11v5.5M12 7.4v.4" />`,
  saved: html`<rect x="7" y="2.5" width="10" height="19" rx="2.2" /><path d="M9.8 12.2l1.7 1.7 3-3.4" />`,
  sent: html`<path d="M3 12.8l4.4 4.4L16 8" /><path d="M12.2 16.6l.7.6L21.5 8" />`,
  attention: html`<path d="M6 21.5V3.5" /><path d="M6 4h12.5l-3.2 4.3 3.2 4.3H6" fill="currentColor" />`,
  back: html`<path d="M14.5 5 7.5 12l7 7" />`,
  onward: html`<path d="M9.5 5l7 7-7 7" />`,
  close: html`<path d="M6 6l12 12M18 6 6 18" />`,
  add: html`<path d="M12 5v14M5 12h14" />`,
  search: html`<circle cx="10.5" cy="10.5" r="6.5" /><path d="M15.5 15.5 21 21" />`,
  settings: html`<path d="M4 7h9M19 7h1M4 17h1M11 17h9" /><circle cx="16" cy="7" r="2.6" /><circle cx="8" cy="17" r="2.6" />`,
  done: html`<path d="M4.5 12.8l5 5L19.5 7" />`,
};

/** @param {{name: keyof typeof DRAWINGS}} props */
export function Mark({ name }) {
  return html`<svg class="mark mark-${name}" viewBox="0 0 24 24" aria-hidden="true" focusable="false">${DRAWINGS[name]}</svg>`;
}
