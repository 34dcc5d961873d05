/** A sentence of the page; on request with its English beneath, for the surgeon who does not read the patient's language. */
import { html } from '../../vendor/preact.js';
import { speakerOf } from '../../words/speaker.js';

const english = speakerOf(null);

/** @param {{said: import('../../words/speaker.js').Said, speaker: import('../../words/speaker.js').Speaker, both: boolean, strong?: boolean}} props */
export function Told({ said, speaker, both, strong = false }) {
  const words = speaker.said(said);
  return html`<p>
    ${strong ? html`<strong>${words}</strong>` : words}
    ${both && speaker.language !== 'en' && html`<span class="counsel-english" lang="en" dir="ltr">${english.said(said)}</span>`}
  </p>`;
}
