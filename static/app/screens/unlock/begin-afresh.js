/** Emptying this phone with the account's password, knowing what that costs: what is left when nothing else opens it. */
import { Field } from '../../parts/field/field.js';
import { Notice } from '../../parts/notice/notice.js';
import { SecretField } from '../../parts/secret-field/secret-field.js';
import { startAfresh } from '../../session/session.js';
import { html, useState } from '../../vendor/preact.js';
import { say } from '../../words/say.js';

/** @param {{onClose: () => void}} props */
export function BeginAfresh({ onClose }) {
  const [password, setPassword] = useState('');
  const [code, setCode] = useState(/** @type {string | null} */ (null));
  const [unsent, setUnsent] = useState(/** @type {{count: number, text: string} | null} */ (null));
  const [problem, setProblem] = useState('');

  const beginAfresh = async (/** @type {Event} */ event) => {
    event.preventDefault();
    setProblem('');
    try {
      await startAfresh({ password, losing: unsent?.count ?? 0, ...(code && { code: code.trim() }) });
    } catch (/** @type {any} */ fault) {
      if (fault.code?.startsWith('second_factor_')) setCode('');
      if (fault.code === 'unsent_work') setUnsent({ count: Number(fault.value), text: fault.text });
      else setProblem(fault.text ?? say('Nothing was changed.'));
    }
  };

  return html`<form class="stack" onSubmit=${beginAfresh} novalidate>
    <p>${say('The clinic keeps nothing that could open this phone. It can be emptied and filled again from the clinic; that needs a network and your password.')}</p>
    <${SecretField} label=${say('Password of your account')} name="afresh-password" kind="passphrase" purpose="current-password" value=${password} onInput=${setPassword} />
    ${code !== null &&
    html`<${Field} label=${say('Code of your authenticator app')} name="afresh-code" value=${code} onInput=${setCode} input=${{ inputmode: 'numeric', autocomplete: 'one-time-code' }} />`}
    ${unsent && html`<${Notice} level="stop"><p>${unsent.text}</p><//>`}
    ${problem && html`<p class="field-fault" role="alert">${problem}</p>`}
    <div class="buttons">
      <button type="button" class="button" onClick=${onClose}>${say('Try again to unlock')}</button>
      <button class="button grave">${unsent ? say('Lose it and begin afresh') : say('Empty this phone')}</button>
    </div>
  </form>`;
}
