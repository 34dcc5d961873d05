/** Signing in with the clinic's account, and choosing the clinic for a person who works in several. */
import { useObservable } from '../../observable.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { AppLanguage } from '../../parts/language/app-language.js';
import { chooseClinic, session } from '../../session/session.js';
import { html, useState } from '../../vendor/preact.js';
import { roleWords } from '../../words/roles.js';
import { say } from '../../words/say.js';
import { Cleared } from './cleared.js';
import { Emptied } from './emptied.js';
import { LoginForm } from './login-form.js';

export default function SignIn() {
  const { phase, clinics, user, emptied } = useObservable(session);
  if (phase === 'choose-clinic') return html`<${ChooseClinic} clinics=${clinics} />`;
  return user ? html`<${Again} username=${user.username} />` : html`<${First} emptied=${emptied} />`;
}

/** @param {{username: string}} props */
function Again({ username }) {
  return html`<${Frame} title=${say('Sign in again')} layout="alone" back="/patients" next=${{ label: say('Sign in'), form: 'login' }}>
    <div class="stack">
      <p>${say('The clinic asks who you are before it takes or gives records. Until then everything is kept on this phone and works on.')}</p>
      <${LoginForm} id="login" username=${username} />
    </div>
  <//>`;
}

/** @param {{emptied: import('../../session/login.js').Emptied | null}} props */
function First({ emptied }) {
  return html`<${Frame} title=${say('Sign in')} layout="alone" next=${{ label: say('Sign in'), form: 'login' }}>
    <div class="stack">
      ${emptied && html`<${Emptied} emptied=${emptied} />`}
      <${Cleared} />
      <p>${say('With the account of your clinic. This needs a network once; from then on the app works without one.')}</p>
      <${LoginForm} id="login" />
      <${AppLanguage} />
    </div>
  <//>`;
}

/** @param {{clinics: {id: string, name: string, role: string}[]}} props */
function ChooseClinic({ clinics }) {
  const [faults, setFaults] = useState(/** @type {import('../../parts/fault-list/fault-list.js').FaultFacts[]} */ ([]));
  const choose = (id) => chooseClinic(id).catch((fault) => setFaults([fault]));
  return html`<${Frame} title=${say('Which clinic?')} layout="alone">
    <div class="stack">
      <${FaultList} faults=${faults} title=${say('The clinic could not be opened.')} />
      ${clinics.length === 0 && html`<p>${say('Your account belongs to no clinic yet. The coordinator of your clinic can add it.')}</p>`}
      <ul class="clinic-list">
        ${clinics.map(
          (clinic) => html`<li key=${clinic.id}>
            <button type="button" class="button clinic-choice" onClick=${() => choose(clinic.id)}>
              <strong>${clinic.name}</strong> <span class="soft">${say('as {role}', { role: roleWords(clinic.role) })}</span>
            </button>
          </li>`,
        )}
      </ul>
    </div>
  <//>`;
}
