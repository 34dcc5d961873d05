/** One device: what it is called, when it was seen, and whether it is still in use. */
import { agoWords, momentWords } from '../../parts/calendar/ago.js';
import { useNow } from '../../parts/calendar/clock.js';
import { html } from '../../vendor/preact.js';
import { Rename } from './rename.js';
import { Revoke } from './revoke.js';

/** @typedef {import('./use-devices.js').OwnDevice} OwnDevice */

/** @param {{device: OwnDevice, rename: (device: OwnDevice, name: string) => unknown, revoke: (device: OwnDevice) => unknown}} props */
export function DeviceLine({ device, rename, revoke }) {
  const now = useNow();
  return html`<li class="card device-line">
    <div>
      <h2>${device.name} ${device.this && html`<span class="device-this">in your hand</span>`}</h2>
      <p>Last seen ${momentWords(device.last_seen_at)} (${agoWords(device.last_seen_at, now)})</p>
      <p class="small soft">First signed in ${momentWords(device.registered_at)}</p>
      ${device.revoked_at && html`<p><strong>Revoked ${momentWords(device.revoked_at)}.</strong> ${restOf(device)}</p>`}
    </div>
    ${!device.revoked_at && html`<div class="buttons">
      <${Rename} device=${device} rename=${rename} />
      <${Revoke} device=${device} revoke=${revoke} />
    </div>`}
  </li>`;
}

/** @param {import('./use-devices.js').OwnDevice} device */
function restOf({ closed_at }) {
  return closed_at
    ? 'It has sent all that it held, and was emptied.'
    : 'It has not given back what it holds yet. When it is opened with a network it sends that, and is emptied.';
}
