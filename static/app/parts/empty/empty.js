/** A place with nothing in it yet: what belongs here, and the one step that fills it. */
import { html } from '../../vendor/preact.js';

/** @param {{title: string, children?: unknown, step?: {label: string, to: string}}} props */
export function Empty({ title, step, children }) {
  return html`<div class="empty">
    <p class="empty-title">${title}</p>
    ${children && html`<div class="empty-text">${children}</div>`}
    ${step && html`<a class="button" href=${`#${step.to}`}>${step.label}</a>`}
  </div>`;
}
