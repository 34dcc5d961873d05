/** Versions at work, and what the app is not. */
import { engineState } from '../../engine/engine.js';
import { useObservable } from '../../observable.js';
import { Notice } from '../../parts/notice/notice.js';
import { release } from '../../shell/release.js';
import { html } from '../../vendor/preact.js';
import { useAbout } from './use-about.js';

const ENGINE_WORDS = { starting: 'starting', ready: 'ready, self-test passed', failed: 'not working; it refuses to calculate' };

export function About() {
  const about = useAbout();
  const { phase, text } = useObservable(engineState);
  return html`<section class="stack" aria-labelledby="about">
    <h2 id="about">About</h2>
    <dl class="facts">
      <div class="fact"><dt>App</dt><dd>${release.name}</dd></div>
      <div class="fact"><dt>Engine</dt><dd>${about?.engine_version ?? ''} <span class="soft">${ENGINE_WORDS[phase]}</span></dd></div>
    </dl>
    ${phase === 'failed' && html`<${Notice} level="stop"><p>${text}</p><//>`}
    <${Notice} level="caution">
      <p>
        This app supports the judgement of a licensed surgeon and the local protocol; it replaces neither. Doses come from named tables whose sources are shown
        with them. Figures marked <em>from memory, verify</em> have not been checked against their source.
      </p>
      <p>Check the patient, the eye, the muscle and the millimetres against your own measurement before operating.</p>
    <//>
  </section>`;
}
