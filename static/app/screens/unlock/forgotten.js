/** What can be done when the PIN or passphrase is forgotten. */
import { Sheet } from '../../parts/sheet/sheet.js';
import { canRecover } from '../../session/session.js';
import { html, useEffect, useState } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { BeginAfresh } from './begin-afresh.js';
import { NewSecret } from './new-secret.js';

export function Forgotten() {
  const [open, setOpen] = useState(false);
  const [can, setCan] = useState(false);

  useEffect(() => {
    canRecover().then(setCan, () => {});
  }, []);

  const close = () => setOpen(false);
  return html`<button type="button" class="button bare" aria-haspopup="dialog" onClick=${() => setOpen(true)}>${say('I forgot it')}</button>
    <${Sheet} open=${open} title=${can ? say('A new PIN or passphrase') : say('Begin afresh on this phone')} onClose=${close}>
      ${can ? html`<${NewSecret} onCannot=${() => setCan(false)} />` : html`<${BeginAfresh} onClose=${close} />`}
    <//>`;
}
