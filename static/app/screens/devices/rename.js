/** Calling a device by a name that tells it from the others: browsers say no more than which system it is. */
import { Field } from '../../parts/field/field.js';
import { Sheet } from '../../parts/sheet/sheet.js';
import { html, useState } from '../../vendor/preact.js';

const LONGEST = 80;

/** @param {{device: import('./use-devices.js').OwnDevice, rename: (device: import('./use-devices.js').OwnDevice, name: string) => unknown}} props */
export function Rename({ device, rename }) {
  const [open, setOpen] = useState(false);
  const [name, setName] = useState(device.name);
  const which = device.this ? 'the device in your hand' : device.name;

  const show = () => {
    setName(device.name);
    setOpen(true);
  };
  /** @param {Event} event */
  const keep = (event) => {
    event.preventDefault();
    setOpen(false);
    if (name.trim() !== device.name) rename(device, name.trim());
  };

  return html`<button type="button" class="button" aria-haspopup="dialog" aria-label=${`Rename ${which}`} onClick=${show}>Rename</button>
    <${Sheet} open=${open} title=${`Rename ${which}`} onClose=${() => setOpen(false)}>
      <form class="stack" onSubmit=${keep}>
        <${Field} label="Name of the device" name=${`name-${device.id}`} value=${name} onInput=${setName}
          hint="Whose it is, or where it lies: what you would look for if it were lost." input=${{ maxLength: LONGEST }} />
        <div class="buttons">
          <button type="button" class="button" onClick=${() => setOpen(false)}>Leave it</button>
          <button type="submit" class="button main" disabled=${!name.trim()}>Keep this name</button>
        </div>
      </form>
    <//>`;
}
