/** A new PIN or passphrase in place of a forgotten one, after signing in on this phone. Everything here stays. */
import { Choice } from '../../parts/choice/choice.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Field } from '../../parts/field/field.js';
import { SecretField } from '../../parts/secret-field/secret-field.js';
import { recover } from '../../session/session.js';
import { html, useState } from '../../vendor/preact.js';
import { marked, said, say } from '../../words/say.js';
import { kinds } from '../secret/kinds.js';
import { rememberedKind, rememberKind } from './kind.js';

/** @typedef {import('../../parts/fault-list/fault-list.js').FaultFacts} FaultFacts */

const BLANK = { password: '', next: '', again: '' };
const OFFLINE = marked('The clinic cannot be reached now, and this needs it. Nothing is lost: try again where there is a network.');

/** @param {{onCannot: () => void}} props `onCannot`: the clinic cannot help, and what remains is to begin afresh */
export function NewSecret({ onCannot }) {
  const [kind, setKind] = useState(rememberedKind);
  const [typed, setTyped] = useState(BLANK);
  const [code, setCode] = useState(/** @type {string | null} */ (null));
  const [busy, setBusy] = useState(false);
  const [faults, setFaults] = useState(/** @type {FaultFacts[]} */ ([]));
  const type = (/** @type {string} */ field) => (/** @type {string} */ value) => setTyped((before) => ({ ...before, [field]: value }));

  const submit = async (/** @type {Event} */ event) => {
    event.preventDefault();
    if (busy) return;
    if (typed.next !== typed.again) return setFaults([{ code: 'not_alike', field: 'again', text: say('The two new entries are not alike.') }]);
    setBusy(true);
    setFaults([]);
    try {
      await recover({ password: typed.password, next: typed.next, ...(code && { code: code.trim() }) });
      rememberKind(kind);
    } catch (/** @type {any} */ fault) {
      if (fault.code?.startsWith('second_factor_')) setCode('');
      setFaults([{ code: fault.code ?? 'not_changed', text: fault.code === 'unreachable' ? said(OFFLINE) : (fault.text ?? say('Nothing was changed.')) }]);
      setBusy(false);
    }
  };

  const isPin = kind === 'pin';
  return html`<form class="stack" onSubmit=${submit} novalidate>
    <p>${say('Sign in with your password, here and now, and choose a new one. Everything on this phone stays: records, what waits to be sent, drafts.')}</p>
    <${FaultList} faults=${faults} title=${say('The lock is as it was.')} />
    <${SecretField} label=${say('Password of your account')} name="recover-password" kind="passphrase" purpose="current-password" value=${typed.password} onInput=${type('password')} />
    ${code !== null &&
    html`<${Field} label=${say('Code of your authenticator app')} name="recover-code" value=${code} onInput=${setCode} input=${{ inputmode: 'numeric', autocomplete: 'one-time-code' }} />`}
    <${Choice} legend=${say('The new one is a')} name="recover-kind" options=${kinds()} value=${kind} onChange=${setKind} />
    <${SecretField} key=${`${kind} next`} label=${isPin ? say('New PIN') : say('New passphrase')} name="recover-next" kind=${kind} purpose="new-password" value=${typed.next} onInput=${type('next')} />
    <${SecretField} key=${`${kind} again`} label=${say('The same again')} name="recover-again" kind=${kind} purpose="new-password" value=${typed.again} onInput=${type('again')} />
    <div class="buttons">
      <button class="button main">${busy ? say('Asking the clinic') : isPin ? say('Use the new PIN') : say('Use the new passphrase')}</button>
      ${faults.some(({ code: why }) => why.startsWith('recovery_') || why === 'device_revoked') &&
      html`<button type="button" class="button" onClick=${onCannot}>${say('Begin afresh instead')}</button>`}
    </div>
  </form>`;
}
