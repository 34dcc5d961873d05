/** Leaving this phone. What was not sent stays here, sealed, and the person is told how much before it is done. */
import { Notice } from '../../parts/notice/notice.js';
import { Sheet } from '../../parts/sheet/sheet.js';
import { signOut } from '../../session/session.js';
import { html, useState } from '../../vendor/preact.js';
import { say } from '../../words/say.js';

/** @param {{label: string, look?: string}} props `look` is a class of the opening button */
export function SignOut({ label, look = '' }) {
  const [open, setOpen] = useState(false);
  const [unsent, setUnsent] = useState(/** @type {{count: number, text: string} | null} */ (null));
  const [problem, setProblem] = useState('');
  const [busy, setBusy] = useState(false);

  const leave = async () => {
    setBusy(true);
    setProblem('');
    try {
      await signOut({ leaving: unsent?.count ?? 0 });
    } catch (/** @type {any} */ fault) {
      if (fault.code === 'unsent_work') setUnsent({ count: Number(fault.value), text: fault.text });
      else setProblem(fault.text ?? say('Signing out did not work. Nothing was changed.'));
    } finally {
      setBusy(false);
    }
  };

  return html`<button type="button" class=${`button ${look}`} aria-haspopup="dialog" onClick=${() => setOpen(true)}>${label}</button>
    <${Sheet} open=${open} title=${say('Sign out of this phone')} onClose=${() => setOpen(false)}>
      <div class="stack">
        <p>${say('Signing in again needs a network. To hand the phone over for a moment, lock it instead.')}</p>
        ${unsent && html`<${Notice} level="caution"><p>${unsent.text}</p><//>`}
        ${problem && html`<p class="field-fault" role="alert">${problem}</p>`}
        <p role="status" class="soft">${busy ? say('Sending what waits, then signing out') : ''}</p>
        <div class="buttons">
          <button type="button" class="button" onClick=${() => setOpen(false)}>${say('Stay')}</button>
          <button type="button" class="button grave" onClick=${leave}>${unsent ? say('Sign out and leave it here') : say('Sign out')}</button>
        </div>
      </div>
    <//>`;
}
