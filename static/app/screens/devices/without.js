/** Why there is no list, and what to do about it. */
import { Notice } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';

/** @param {{fault: import('../../fault.js').Fault, again: () => unknown}} props */
export function Without({ fault, again }) {
  const isOffline = fault.code === 'unreachable';
  return html`<${Notice} level="note">
      <p>${isOffline ? 'The clinic keeps this list, so it needs the network. Everything else works on without one.' : fault.text}</p>
    <//>
    <div class="buttons">
      ${fault.code === 'not_authenticated'
        ? html`<a class="button" href="#/sign-in">Sign in again</a>`
        : html`<button type="button" class="button" onClick=${again}>Try again</button>`}
    </div>`;
}
