/** Versions at work, and what the app is not. */
import { engineState } from '../../engine/engine.js';
import { useObservable } from '../../observable.js';
import { Notice } from '../../parts/notice/notice.js';
import { release } from '../../shell/release.js';
import { html } from '../../vendor/preact.js';
import { marked, said, say } from '../../words/say.js';
import { useAbout } from './use-about.js';

const ENGINE_WORDS = { starting: marked('starting'), ready: marked('ready, self-test passed'), failed: marked('not working; it refuses to calculate') };

export function About() {
  const about = useAbout();
  const { phase, text } = useObservable(engineState);
  return html`<section class="stack" aria-labelledby="about">
    <h2 id="about">${say('About')}</h2>
    <dl class="facts">
      <div class="fact"><dt>${say('App')}</dt><dd dir="ltr">${release.name}</dd></div>
      <div class="fact"><dt>${say('Engine')}</dt><dd>${about?.engine_version ?? ''} <span class="soft">${said(ENGINE_WORDS[phase])}</span></dd></div>
    </dl>
    ${phase === 'failed' && html`<${Notice} level="stop"><p>${text}</p><//>`}
    <${Notice} level="caution">
      <p>${say('This app supports the judgement of a licensed surgeon and the local protocol; it replaces neither.')}</p>
      <p>${say('Doses come from named tables whose sources are shown with them. Figures marked “from memory, verify” have not been checked against their source.')}</p>
      <p>${say('Check the patient, the eye, the muscle and the millimetres against your own measurement before operating.')}</p>
    <//>
  </section>`;
}
