/**
 * The quiet line that tells where the work is: saved on this phone, sent, or in need of attention. It leads to the whole
 * story. Only a change of state is announced; ages tick silently.
 */
import { useObservable } from '../../observable.js';
import { session } from '../../session/session.js';
import { syncState } from '../../sync/sync.js';
import { html } from '../../vendor/preact.js';
import { useNow } from '../calendar/clock.js';
import { Mark } from '../mark/mark.js';
import { storageWords } from './words.js';

export function StorageLine() {
  const words = storageWords(useObservable(syncState), useObservable(session).login, useNow());
  return html`<div class="storage-line">
    <a class=${`storage-link storage-${words.mark}`} href="#/status">
      <${Mark} name=${words.mark} />
      <span>
        <span class="storage-state">${words.state}</span>
        <span class="storage-more">${words.more}</span>
      </span>
    </a>
    <p class="unseen" role="status">${words.state}</p>
  </div>`;
}
