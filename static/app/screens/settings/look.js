/** Light or dark, and from where the gaze map is seen. */
import { useObservable } from '../../observable.js';
import { Choice } from '../../parts/choice/choice.js';
import { orientation, setOrientation } from '../../parts/gaze-map/orientation.js';
import { setTheme, theme } from '../../shell/theme.js';
import { html } from '../../vendor/preact.js';

const THEMES = [
  { value: 'device', words: 'As the device' },
  { value: 'light', words: 'Light' },
  { value: 'dark', words: 'Dark' },
];

const ORIENTATIONS = [
  { value: 'facing', words: 'Facing the patient', hint: 'the patient’s right is on the left' },
  { value: 'through', words: 'Through the patient’s eyes', hint: 'the patient’s right is on the right' },
];

export function Look() {
  return html`<section class="stack" aria-labelledby="look">
    <h2 id="look">Look</h2>
    <${Choice} legend="Light and dark" name="theme" options=${THEMES} value=${useObservable(theme)} onChange=${setTheme} />
    <${Choice} legend="Gaze map" name="orientation" options=${ORIENTATIONS} value=${useObservable(orientation)} onChange=${setOrientation} />
  </section>`;
}
