/** Says that an earlier, unsaved entry has been put back, and offers to begin afresh. */
import { html } from '../../vendor/preact.js';

/** @param {{onStartOver: () => void}} props */
export function Restored({ onStartOver }) {
  return html`<div class="restored" role="status">
    <p>This is what you had typed before; it is not saved yet.</p>
    <button type="button" class="button bare" onClick=${onStartOver}>Start over</button>
  </div>`;
}
