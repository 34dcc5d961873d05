/** User name and password, asked once while there is a network. */
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Field } from '../../parts/field/field.js';
import { signIn } from '../../session/session.js';
import { html, useEffect, useRef, useState } from '../../vendor/preact.js';
import { say } from '../../words/say.js';

/** @param {{id: string, username?: string}} props `id` of the form, for the step that submits it; `username` to begin with */
export function LoginForm({ id, username: known = '' }) {
  const [username, setUsername] = useState(known);
  const [password, setPassword] = useState('');
  const [code, setCode] = useState(/** @type {string | null} */ (null));
  const [faults, setFaults] = useState(/** @type {import('../../parts/fault-list/fault-list.js').FaultFacts[]} */ ([]));
  const [busy, setBusy] = useState(false);
  const form = useRef(/** @type {HTMLFormElement | null} */ (null));
  const isCodeAsked = code !== null;

  useEffect(() => {
    if (isCodeAsked) /** @type {HTMLElement | null | undefined} */ (form.current?.querySelector(`[name="${id}-code"]`))?.focus();
  }, [isCodeAsked]);

  const submit = async (event) => {
    event.preventDefault();
    if (busy) return;
    setBusy(true);
    setFaults([]);
    try {
      await signIn({ username: username.trim(), password, ...(code && { code: code.trim() }) });
    } catch (fault) {
      if (fault.code?.startsWith('second_factor_')) setCode('');
      // To be asked for the code the first time is the next step and no mistake.
      if (fault.code !== 'second_factor_required' || isCodeAsked) setFaults([fault]);
    } finally {
      setBusy(false);
    }
  };

  const user = { autocomplete: 'username', autocapitalize: 'none', spellcheck: false };
  return html`<form id=${id} ref=${form} class="stack" onSubmit=${submit} novalidate aria-busy=${String(busy)}>
    <${FaultList} faults=${faults} title=${say('Not signed in.')} />
    <${Field} label=${say('User name')} name=${`${id}-user`} value=${username} onInput=${setUsername} input=${user} />
    <${Field} label=${say('Password')} name=${`${id}-password`} value=${password} onInput=${setPassword} input=${{ type: 'password', autocomplete: 'current-password' }} />
    ${isCodeAsked &&
    html`<${Field} label=${say('Code of your authenticator app')} name=${`${id}-code`} hint=${say('Your account needs it, too: the six digits that the app shows now.')} value=${code} onInput=${setCode} input=${{ inputmode: 'numeric', autocomplete: 'one-time-code' }} />`}
    <p role="status" class="soft">${busy ? say('Asking the clinic') : ''}</p>
  </form>`;
}
