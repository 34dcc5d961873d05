/** What became of what was on this phone after it was revoked, and how it can be used again. */
import { Notice } from '../../parts/notice/notice.js';
import { becomeAnotherDevice } from '../../session/session.js';
import { html } from '../../vendor/preact.js';

/** @param {{emptied: import('../../session/login.js').Emptied}} props */
export function Emptied({ emptied }) {
  const { name, sent, lost } = emptied;
  return html`<${Notice} level="caution">
      <p><strong>This phone was revoked for ${name}, and their records were removed from it.</strong></p>
      <p>${sent ? 'All that the clinic could take was sent to it first.' : 'The clinic takes nothing more from it. What had been sent before is safe there.'}</p>
      ${lost ? html`<p>Not with the clinic, and gone with it: <strong>${lost}</strong>.</p>` : html`<p>Nothing was lost.</p>`}
    <//>
    <p>To go on with this phone, make it a new device of the clinic and sign in: it begins empty, and fetches what you may have.</p>
    <div class="buttons"><button type="button" class="button" onClick=${becomeAnotherDevice}>Use it as a new device</button></div>`;
}
