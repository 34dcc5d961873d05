/** Taking a device out of use: what that means is said before it is done, for it cannot be undone. */
import { momentWords } from '../../parts/calendar/ago.js';
import { Sheet } from '../../parts/sheet/sheet.js';
import { html, useState } from '../../vendor/preact.js';

/** @param {{device: import('./use-devices.js').OwnDevice, revoke: (device: import('./use-devices.js').OwnDevice) => unknown}} props */
export function Revoke({ device, revoke }) {
  const [open, setOpen] = useState(false);
  const [sure, setSure] = useState(false);
  const which = device.this ? 'the device in your hand' : device.name;

  const show = () => {
    setSure(false);
    setOpen(true);
  };
  const act = () => {
    setOpen(false);
    return revoke(device);
  };

  return html`<button type="button" class="button" aria-haspopup="dialog" aria-label=${`Revoke ${which}`} onClick=${show}>Revoke</button>
    <${Sheet} open=${open} title=${`Revoke ${which}?`} onClose=${() => setOpen(false)}>
      <div class="stack">
        <p>${device.name}, last seen ${momentWords(device.last_seen_at)}.</p>
        <ul class="device-means">
          <li>The clinic gives it nothing more, from now on.</li>
          <li>What was saved on it and not sent may still come in: it is sent first, when the device is unlocked with a network.</li>
          <li>Then your records on it are removed. Until it has a network they stay on it, sealed behind its PIN or passphrase.</li>
          <li>This cannot be taken back. The device can be signed in later as a new one, and begins empty.</li>
        </ul>
        ${device.this && html`<p><strong>This is the device that you hold.</strong> You will have to sign in again to go on working.</p>`}
        <label class="device-sure"><input type="checkbox" checked=${sure} onChange=${(/** @type {any} */ event) => setSure(event.currentTarget.checked)} /> <span>I want ${which} out of use</span></label>
        <div class="buttons">
          <button type="button" class="button" onClick=${() => setOpen(false)}>Keep it</button>
          <button type="button" class="button grave" disabled=${!sure} onClick=${act}>Revoke</button>
        </div>
      </div>
    <//>`;
}
