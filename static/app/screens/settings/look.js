/** Light or dark, and from where the gaze map is seen. */
import { useObservable } from '../../observable.js';
import { Choice } from '../../parts/choice/choice.js';
import { orientation, setOrientation } from '../../parts/gaze-map/orientation.js';
import { setTheme, theme } from '../../shell/theme.js';
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';

const themes = () => [
  { value: 'device', words: say('As the device') },
  { value: 'light', words: say('Light') },
  { value: 'dark', words: say('Dark') },
];

const ORIENTATIONS = [
  { value: 'facing', words: 'Facing the patient', hint: 'the patient’s right is on the left' },
  { value: 'through', words: 'Through the patient’s eyes', hint: 'the patient’s right is on the right' },
];

export function Look() {
  return html`<section class="stack" aria-labelledby="look">
    <h2 id="look">${say('Look')}</h2>
    <${Choice} legend=${say('Light and dark')} name="theme" options=${themes()} value=${useObservable(theme)} onChange=${setTheme} />
    <div lang="en" dir="ltr">
      <${Choice} legend="Gaze map" name="orientation" options=${ORIENTATIONS} value=${useObservable(orientation)} onChange=${setOrientation} />
    </div>
  </section>`;
}
