/** When the app locks by itself, locking it now, and another PIN or passphrase. */
import { useObservable } from '../../observable.js';
import { Choice } from '../../parts/choice/choice.js';
import { AUTO_LOCK_CHOICES_MIN, autoLock_min, canRecover, lock, setAutoLock } from '../../session/session.js';
import { html, useEffect, useState } from '../../vendor/preact.js';
import { ChangeSecret } from './change-secret.js';

const CHOICES = AUTO_LOCK_CHOICES_MIN.map((minutes) => ({ value: minutes, words: `${minutes} min` }));

export function Lock() {
  const [isHelped, setHelped] = useState(false);
  useEffect(() => {
    canRecover().then(setHelped, () => {});
  }, []);
  return html`<section class="stack" aria-labelledby="lock">
    <h2 id="lock">Lock</h2>
    <${Choice} legend="Lock when untouched for" name="auto-lock" options=${CHOICES} value=${useObservable(autoLock_min)} onChange=${setAutoLock} />
    <p class="small soft">
      ${isHelped
        ? 'A forgotten PIN or passphrase can be replaced by signing in on this phone.'
        : 'A forgotten PIN or passphrase can be replaced once this phone has met the clinic. Until then do not forget it.'}
    </p>
    <div class="buttons">
      <button type="button" class="button" onClick=${() => lock()}>Lock now</button>
      <${ChangeSecret} />
    </div>
  </section>`;
}
