/** The language of the app, chosen before or after signing in; the clinical screens stay English, and that is said. */
import { useObservable } from '../../observable.js';
import { html, useState } from '../../vendor/preact.js';
import { language, reviewed, say, setLanguage } from '../../words/say.js';
import { speakerOf } from '../../words/speaker.js';
import { LanguageChoice, reviewWords } from './language.js';

const english = speakerOf(null);

export function AppLanguage() {
  const code = useObservable(language);
  const [isMissing, setMissing] = useState(false);
  const choose = (/** @type {import('./language.js').Code} */ next) => {
    setMissing(false);
    setLanguage(next).catch(() => setMissing(true));
  };
  return html`<div class="stack tight">
    <${LanguageChoice} legend=${say('Language')} name="language" value=${code} onChange=${choose} />
    <p role="status">${isMissing ? say('The words of this language are not on this phone yet. Open the app once with a network.') : ''}</p>
    <p class="small soft">${say('Clinical screens are in English until a person has reviewed their words.')}</p>
    ${code !== 'en' &&
    html`<p class="small soft">${reviewWords({ ...english, say }, reviewed())} <span lang="en" dir="ltr">${reviewWords(english, reviewed())}</span></p>`}
  </div>`;
}
