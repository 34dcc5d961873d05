/** What became of what was on this phone after it was revoked, and how it can be used again. */
import { Notice } from '../../parts/notice/notice.js';
import { becomeAnotherDevice } from '../../session/session.js';
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';

/** @param {{emptied: import('../../session/login.js').Emptied}} props */
export function Emptied({ emptied }) {
  const { name, sent, lost } = emptied;
  return html`<${Notice} level="caution">
      <p><strong>${say('This phone was revoked for {name}, and their records were removed from it.', { name })}</strong></p>
      <p>${sent ? say('All that the clinic could take was sent to it first.') : say('The clinic takes nothing more from it. What had been sent before is safe there.')}</p>
      ${lost ? html`<p>${say('Not with the clinic, and gone with it: {count}.', { count: lost })}</p>` : html`<p>${say('Nothing was lost.')}</p>`}
    <//>
    <p>${say('To go on with this phone, make it a new device of the clinic and sign in: it begins empty, and fetches what you may have.')}</p>
    <div class="buttons"><button type="button" class="button" onClick=${becomeAnotherDevice}>${say('Use it as a new device')}</button></div>`;
}
