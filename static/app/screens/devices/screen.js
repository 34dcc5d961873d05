/** The devices that a person signed in from: which there are, when each was last seen, and taking one out of use. */
import { Frame } from '../../parts/frame/frame.js';
import { back } from '../../shell/router.js';
import { html } from '../../vendor/preact.js';
import { DeviceLine } from './device-line.js';
import { useDevices } from './use-devices.js';
import { Without } from './without.js';

export default function Devices() {
  const { devices, fault, busy, load, rename, revoke } = useDevices();
  return html`<${Frame} title="Your devices" back=${back}>
    <div class="stack wide">
      <p>Every phone, tablet or browser that you signed in from. Take out of use what is lost, given away or no longer yours.</p>
      ${fault && html`<${Without} fault=${fault} again=${load} />`}
      ${devices && html`<ul class="device-list">${devices.map((device) => html`<${DeviceLine} key=${device.id} device=${device} rename=${rename} revoke=${revoke} />`)}</ul>`}
      <p role="status" class="soft">${busy ? 'Asking the clinic' : ''}</p>
    </div>
  <//>`;
}
