/** What has not been sent yet, oldest first. */
import { agoWords } from '../../parts/calendar/ago.js';
import { useNow } from '../../parts/calendar/clock.js';
import { find } from '../../store/heads.js';
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { carriedFor, kindWords, whose } from './what.js';

const SHOWN = 20;

/** @param {{records: readonly import('../../store/envelope.js').LedgerRecord[], entries: readonly import('../../store/outbox.js').Entry[]}} props */
export function Waiting({ records, entries }) {
  const now = useNow();
  const waiting = entries.filter((entry) => entry.state === 'waiting').sort((a, b) => a.sequence - b.sequence);
  if (waiting.length === 0) return null;
  return html`<section class="stack tight" aria-labelledby="waiting">
    <h2 id="waiting">${say('Saved on this phone, still to send: {count}', { count: waiting.length })}</h2>
    <ul class="status-waiting">
      ${waiting.slice(0, SHOWN).map((entry) => {
        const record = find(records, entry.id);
        return html`<li key=${entry.id}>
          <span>
            ${record ? html`<span lang="en" dir="ltr">${kindWords(record)}: ${whose(records, record)}</span>` : say('A record')}
            ${entry.carried && record && html`<span class="small soft">, ${carriedFor(entry.carried, record)}</span>`}
          </span>
          <span class="small soft">${agoWords(entry.since, now)}</span>
        </li>`;
      })}
    </ul>
    ${waiting.length > SHOWN && html`<p class="soft">${say('and {count} more', { count: waiting.length - SHOWN })}</p>`}
  </section>`;
}
