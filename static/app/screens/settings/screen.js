/** How the app looks and behaves on this device, the lock, and what versions are at work. */
import { Frame } from '../../parts/frame/frame.js';
import { AppLanguage } from '../../parts/language/app-language.js';
import { back } from '../../shell/router.js';
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { About } from './about.js';
import { Account } from './account.js';
import { CheckItems } from './check-items.js';
import { ClinicTables } from './clinic-tables.js';
import { ExchangeLink } from './exchange-link.js';
import { Look } from './look.js';
import { Lock } from './lock.js';
import { OwnResultsLink } from './own-results.js';
import { Tables } from './tables.js';
import { TheatrePractice } from './theatre-practice.js';

export default function Settings() {
  return html`<${Frame} title=${say('Settings')} back=${back}>
    <div class="stack wide">
      <section class="stack" aria-labelledby="language">
        <h2 id="language">${say('Language')}</h2>
        <${AppLanguage} />
      </section>
      <${Look} />
      <${Tables} />
      <${ClinicTables} />
      <${OwnResultsLink} />
      <${TheatrePractice} />
      <${CheckItems} />
      <${ExchangeLink} />
      <${Lock} />
      <${Account} />
      <${About} />
    </div>
  <//>`;
}
