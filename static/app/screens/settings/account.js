/** Who is signed in, and where. */
import { useObservable } from '../../observable.js';
import { session } from '../../session/session.js';
import { html } from '../../vendor/preact.js';
import { SignOut } from './sign-out.js';

export function Account() {
  const { user, clinic } = useObservable(session);
  if (!user || !clinic) return null;
  return html`<section class="stack" aria-labelledby="account">
    <h2 id="account">Account</h2>
    <dl class="facts">
      <div class="fact"><dt>Name</dt><dd>${user.full_name || user.username}</dd></div>
      <div class="fact"><dt>Clinic</dt><dd>${clinic.name}, as ${clinic.role}</dd></div>
    </dl>
    <div class="buttons">
      <a class="button" href="#/devices">Your devices</a>
      <${SignOut} label="Sign out" />
    </div>
  </section>`;
}
