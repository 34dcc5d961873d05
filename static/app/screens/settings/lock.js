/** When the app locks by itself, locking it now, and another PIN or passphrase. */
import { useObservable } from '../../observable.js';
import { Choice } from '../../parts/choice/choice.js';
import { AUTO_LOCK_CHOICES_MIN, autoLock_min, canRecover, lock, setAutoLock } from '../../session/session.js';
import { html, useEffect, useState } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { ChangeSecret } from './change-secret.js';

const choices = () => AUTO_LOCK_CHOICES_MIN.map((minutes) => ({ value: minutes, words: say('{count} min', { count: minutes }) }));

export function Lock() {
  const [isHelped, setHelped] = useState(false);
  useEffect(() => {
    canRecover().then(setHelped, () => {});
  }, []);
  return html`<section class="stack" aria-labelledby="lock">
    <h2 id="lock">${say('Lock')}</h2>
    <${Choice} legend=${say('Lock when untouched for')} name="auto-lock" options=${choices()} value=${useObservable(autoLock_min)} onChange=${setAutoLock} />
    <p class="small soft">
      ${isHelped
        ? say('A forgotten PIN or passphrase can be replaced by signing in on this phone.')
        : say('A forgotten PIN or passphrase can be replaced once this phone has met the clinic. Until then do not forget it.')}
    </p>
    <div class="buttons">
      <button type="button" class="button" onClick=${() => lock()}>${say('Lock now')}</button>
      <${ChangeSecret} />
    </div>
  </section>`;
}
