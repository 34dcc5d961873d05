/** Choosing the PIN or passphrase that opens the records on this phone without a network. */
import { Choice } from '../../parts/choice/choice.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { SecretField } from '../../parts/secret-field/secret-field.js';
import { setSecret } from '../../session/session.js';
import { html, useState } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { rememberKind } from '../unlock/kind.js';
import { kinds } from './kinds.js';

export default function Secret() {
  const [kind, setKind] = useState(/** @type {import('../unlock/kind.js').Kind} */ ('pin'));
  const [secret, setTyped] = useState('');
  const [again, setAgain] = useState('');
  const [faults, setFaults] = useState(/** @type {import('../../parts/fault-list/fault-list.js').FaultFacts[]} */ ([]));
  const [busy, setBusy] = useState(false);

  const submit = async (event) => {
    event.preventDefault();
    if (busy) return;
    if (secret !== again) return setFaults([{ code: 'not_alike', field: 'again', text: say('The two entries are not alike.') }]);
    setBusy(true);
    try {
      rememberKind(kind);
      await setSecret(secret);
    } catch (fault) {
      setFaults([fault]);
      setBusy(false);
    }
  };

  const change = (set) => (value) => {
    set(value);
    setFaults([]);
  };

  return html`<${Frame} title=${say('Lock this phone’s records')} layout="alone" next=${{ label: busy ? say('Making the lock') : say('Use it'), form: 'secret' }}>
    <form id="secret" class="stack" onSubmit=${submit} novalidate>
      <p>${say('Records on this phone are sealed. You open them with a PIN or a passphrase of your own, with or without a network.')}</p>
      <${Choice} legend=${say('Kind of lock')} quiet name="kind" options=${kinds()} value=${kind} onChange=${change(setKind)} />
      <${FaultList} faults=${faults} title=${say('Not set yet.')} />
      <${SecretField} key=${`${kind} first`} label=${kind === 'pin' ? say('PIN') : say('Passphrase')} name="first" kind=${kind} purpose="new-password" value=${secret} onInput=${change(setTyped)} />
      <${SecretField} key=${`${kind} again`} label=${say('The same again')} name="again" kind=${kind} purpose="new-password" value=${again} onInput=${change(setAgain)} />
      ${kind === 'pin'
        ? html`<${Notice} level="caution"><p>${say('Who copies this phone’s storage can find a PIN by trying them all. A passphrase of several words protects better.')}</p><//>`
        : html`<${Notice} level="note"><p>${say('Four or five unrelated words are easy to remember and hard to guess.')}</p><//>`}
      <${Notice} level="note"><p>${say('It is kept nowhere. If it is forgotten, you can choose a new one on this phone by signing in with your password, where there is a network.')}</p><//>
    </form>
  <//>`;
}
