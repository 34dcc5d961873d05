/** What the clinic refused, with its reason. Each stays until a person corrects it or sends it again; nothing is dropped. */
import { momentWords } from '../../parts/calendar/ago.js';
import { Notice } from '../../parts/notice/notice.js';
import { find } from '../../store/heads.js';
import { retry } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { fieldWords } from '../../words/field.js';
import { kindWords, placeOf, whose } from './what.js';

/** @param {{records: readonly import('../../store/envelope.js').LedgerRecord[], entries: readonly import('../../store/outbox.js').Entry[]}} props */
export function Attention({ records, entries }) {
  const refused = entries.filter((entry) => entry.state === 'attention');
  if (refused.length === 0) return null;
  return html`<section class="stack" aria-labelledby="attention">
    <h2 id="attention">${say('Needs attention: {count}', { count: refused.length })}</h2>
    ${refused.map((entry) => html`<${Refusal} key=${entry.id} entry=${entry} record=${find(records, entry.id)} records=${records} />`)}
  </section>`;
}

/** @param {{entry: import('../../store/outbox.js').Entry, record: import('../../store/envelope.js').LedgerRecord, records: readonly import('../../store/envelope.js').LedgerRecord[]}} props */
function Refusal({ entry, record, records }) {
  return html`<article class="card stack">
    <header>
      <h3>${record ? html`<span lang="en" dir="ltr">${kindWords(record)}</span>` : say('A record')}</h3>
      <p class="small soft">${record && `${whose(records, record)}, `}${say('saved here {moment}', { moment: momentWords(entry.since) })}</p>
    </header>
    <${Notice} level="caution">
      <p>${fieldWords(entry.field) && `${fieldWords(entry.field)}: `}<strong>${entry.text}</strong></p>
      <p class="small">
        ${entry.carried && record
          ? say('It is kept on this phone, complete. {name} corrects it on the device that made it.', { name: entry.carried.maker || record.author })
          : say('It is kept on this phone, complete, until you deal with it. What builds on it waits; other records are sent.')}
      </p>
    <//>
    <div class="buttons">
      ${record && html`<a class="button" href=${`#${placeOf(records, record)}`}>${entry.carried ? say('Look') : say('Look and correct')}</a>`}
      ${record && html`<a class="button" href=${`#/hand-over/${record.id}`}>${say('Hand over by a file')}</a>`}
      <button type="button" class="button" onClick=${() => retry(entry.id)}>${say('Send it again')}</button>
    </div>
  </article>`;
}
