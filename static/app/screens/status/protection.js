/** What the browser promises about keeping what is stored here, in plain words. */
import { useObservable } from '../../observable.js';
import { Notice } from '../../parts/notice/notice.js';
import { broken } from '../../store/store.js';
import { measureStorage, storageState } from '../../store/protection.js';
import { html, useEffect } from '../../vendor/preact.js';
import { say, sayCount } from '../../words/say.js';
import { sizeWords } from './size-words.js';

export function Protection() {
  const damaged = useObservable(broken);
  const { asked, persisted, usage, quota, cleared } = useObservable(storageState);

  // What was fetched since the last save counts too.
  useEffect(() => void measureStorage(), []);

  return html`<section class="stack tight" aria-labelledby="protection">
    <h2 id="protection">${say('This phone’s storage')}</h2>
    ${cleared &&
    html`<${Notice} level="caution"><p>${say('The browser had emptied this phone’s storage. What was sent before has come back or is coming back from the clinic; what was not sent is lost.')}</p><//>`}
    ${persisted
      ? html`<p>${say('The browser has promised to keep it until you remove it.')}</p>`
      : html`<p>
          ${asked ? say('The browser has not promised to keep it.') : say('The browser is asked to keep it when the first record is saved.')}${' '}
          ${say('It could be emptied when space runs out or the app is not used for long. What is sent is safe at the clinic.')}
        </p>`}
    ${damaged.length > 0 &&
    html`<${Notice} level="caution">
      <p>${damagedWords(damaged.length)}</p>
    <//>`}
    ${usage !== null && quota !== null && html`<p class="soft">${say('{used} used of {allowed} allowed.', { used: sizeWords(usage), allowed: sizeWords(quota) })}</p>`}
  </section>`;
}

/** @param {number} count */
function damagedWords(count) {
  return sayCount(
    '{count} stored record is damaged and cannot be read. What was sent before is safe at the clinic and comes back when you begin afresh on this phone.',
    '{count} stored records are damaged and cannot be read. What was sent before is safe at the clinic and comes back when you begin afresh on this phone.',
    count,
  );
}
