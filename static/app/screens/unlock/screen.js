/** Opening the records on this phone. Works without a network; wrong tries make the next one wait. */
import { useObservable } from '../../observable.js';
import { Frame } from '../../parts/frame/frame.js';
import { SecretField } from '../../parts/secret-field/secret-field.js';
import { session, unlock } from '../../session/session.js';
import { html, useEffect, useState } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { SignOut } from '../settings/sign-out.js';
import { Forgotten } from './forgotten.js';
import { rememberedKind, rememberKind } from './kind.js';
import { useWait } from './wait.js';
import { waitWords } from './wait-words.js';

export default function Unlock() {
  const { user, clinic, waitUntil } = useObservable(session);
  const [kind, setKind] = useState(rememberedKind);
  const [secret, setSecret] = useState('');
  const [fault, setFault] = useState(/** @type {import('../../fault.js').Fault | null} */ (null));
  const [busy, setBusy] = useState(false);
  const wait_s = useWait(waitUntil);

  // A locked phone is taken up to be unlocked: the keyboard may come at once.
  useEffect(toSecret, []);

  const submit = async (event) => {
    event.preventDefault();
    if (busy || wait_s > 0) return;
    setBusy(true);
    setFault(null);
    try {
      await unlock(secret);
      rememberKind(kind);
    } catch (refused) {
      setFault(refused);
      setSecret('');
      toSecret();
    } finally {
      setBusy(false);
    }
  };

  const next = wait_s > 0 ? { label: say('Unlock'), blocked: say('Too many wrong tries. Try again in {time}.', { time: waitWords(wait_s) }) } : { label: busy ? say('Opening') : say('Unlock'), form: 'unlock' };
  const other = kind === 'pin' ? 'passphrase' : 'pin';
  return html`<${Frame} title=${say('Unlock')} layout="alone" next=${next}>
    <form id="unlock" class="stack" onSubmit=${submit} novalidate>
      <p>${user?.full_name || user?.username}, ${clinic?.name}</p>
      <${SecretField} label=${kind === 'pin' ? say('PIN') : say('Passphrase')} name="secret" kind=${kind} purpose="current-password" value=${secret} onInput=${setSecret} fault=${fault ?? undefined} />
      <p class="unseen" role="alert">${fault ? say('Still locked. {reason}', { reason: fault.text }) : ''}</p>
      <div class="buttons">
        <button type="button" class="button bare" onClick=${() => setKind(other)}>${kind === 'pin' ? say('I use a passphrase') : say('I use a PIN')}</button>
        <${Forgotten} />
        <${SignOut} label=${say('Another person')} look="bare" />
      </div>
    </form>
  <//>`;
}

function toSecret() {
  document.getElementById('secret')?.focus();
}
