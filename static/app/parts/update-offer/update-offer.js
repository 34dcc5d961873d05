/** A new version waits: it is offered, and only a person's touch puts it in. What is typed is a saved draft by then. */
import { useObservable } from '../../observable.js';
import { applyUpdate, updateState } from '../../shell/update.js';
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';

export function UpdateOffer() {
  const update = useObservable(updateState);
  return html`<div role="status">
    ${update.ready &&
    html`<div class="update-offer">
      <p>${say('A new version is ready.')}</p>
      <button type="button" class="button" onClick=${applyUpdate}>${say('Use it now')}</button>
    </div>`}
  </div>`;
}
