/** Who is signed in, and where. */
import { useObservable } from '../../observable.js';
import { session } from '../../session/session.js';
import { html } from '../../vendor/preact.js';
import { roleWords } from '../../words/roles.js';
import { say } from '../../words/say.js';
import { SignOut } from './sign-out.js';

export function Account() {
  const { user, clinic } = useObservable(session);
  if (!user || !clinic) return null;
  return html`<section class="stack" aria-labelledby="account">
    <h2 id="account">${say('Account')}</h2>
    <dl class="facts">
      <div class="fact"><dt>${say('Name')}</dt><dd>${user.full_name || user.username}</dd></div>
      <div class="fact"><dt>${say('Clinic')}</dt><dd>${clinic.name}, ${say('as {role}', { role: roleWords(clinic.role) })}</dd></div>
    </dl>
    <div class="buttons">
      <a class="button" href="#/devices">${say('Your devices')}</a>
      <${SignOut} label=${say('Sign out')} />
    </div>
  </section>`;
}
