/** Another PIN or passphrase for the same records. */
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { SecretField } from '../../parts/secret-field/secret-field.js';
import { Choice } from '../../parts/choice/choice.js';
import { Sheet } from '../../parts/sheet/sheet.js';
import { changeSecret } from '../../session/session.js';
import { html, useState } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { rememberedKind, rememberKind } from '../unlock/kind.js';
import { kinds } from '../secret/kinds.js';

const BLANK = { old: '', next: '', again: '' };

export function ChangeSecret() {
  const [open, setOpen] = useState(false);
  const [done, setDone] = useState(false);
  const [kind, setKind] = useState(rememberedKind);
  const [typed, setTyped] = useState(BLANK);
  const [faults, setFaults] = useState(/** @type {import('../../parts/fault-list/fault-list.js').FaultFacts[]} */ ([]));
  const type = (field) => (value) => setTyped((before) => ({ ...before, [field]: value }));

  const submit = async (event) => {
    event.preventDefault();
    if (typed.next !== typed.again) return setFaults([{ code: 'not_alike', field: 'again', text: say('The two new entries are not alike.') }]);
    try {
      await changeSecret(typed.old, typed.next);
      rememberKind(kind);
      setTyped(BLANK);
      setFaults([]);
      setOpen(false);
      setDone(true);
    } catch (fault) {
      setFaults([fault]);
    }
  };

  return html`<button type="button" class="button" aria-haspopup="dialog" onClick=${() => setOpen(true)}>${say('Change PIN or passphrase')}</button>
    <p role="status">${done ? say('Changed. Use the new one from now on.') : ''}</p>
    <${Sheet} open=${open} title=${say('Change PIN or passphrase')} onClose=${() => setOpen(false)}>
      <form class="stack" onSubmit=${submit} novalidate>
        <${FaultList} faults=${faults} title=${say('Not changed.')} />
        <${SecretField} label=${say('The present one')} name="secret-old" kind=${rememberedKind()} purpose="current-password" value=${typed.old} onInput=${type('old')} />
        <${Choice} legend=${say('The new one is a')} name="secret-kind" options=${kinds()} value=${kind} onChange=${setKind} />
        <${SecretField} key=${`${kind} next`} label=${say('The new one')} name="secret-next" kind=${kind} purpose="new-password" value=${typed.next} onInput=${type('next')} />
        <${SecretField} key=${`${kind} again`} label=${say('The new one again')} name="secret-again" kind=${kind} purpose="new-password" value=${typed.again} onInput=${type('again')} />
        <div class="buttons"><button class="button main">${say('Change it')}</button></div>
      </form>
    <//>`;
}
