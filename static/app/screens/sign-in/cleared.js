/** The browser emptied this phone's storage: said before anybody takes an empty list for an empty clinic. */
import { useObservable } from '../../observable.js';
import { Notice } from '../../parts/notice/notice.js';
import { storageState } from '../../store/protection.js';
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';

export function Cleared() {
  const { cleared } = useObservable(storageState);
  if (!cleared) return null;
  return html`<${Notice} level="caution">
    <p><strong>${say('This phone’s storage was cleared,')}</strong> ${say('by the browser or by hand. Sign in, and what was sent comes back from the clinic.')}</p>
    <p>${say('What was not sent is gone from here; if it was handed over by a file, take it over from that file.')}</p>
  <//>`;
}
