/** The three figures and the last word from the clinic. */
import { useObservable } from '../../observable.js';
import { agoWords, momentWords } from '../../parts/calendar/ago.js';
import { useNow } from '../../parts/calendar/clock.js';
import { Notice } from '../../parts/notice/notice.js';
import { session } from '../../session/session.js';
import { html } from '../../vendor/preact.js';

/** More than this between the clocks, and the times on records mislead their readers. */
const CLOCK_LIMIT_S = 120;

/** @param {{sync: any, total: number}} props */
export function Sending({ sync, total }) {
  const now = useNow();
  const { login } = useObservable(session);
  const figures = [
    { count: total, words: 'on this phone' },
    { count: sync.waiting, words: 'still to send', more: sync.waiting > 0 && sync.oldestWaitingAt ? `oldest ${agoWords(sync.oldestWaitingAt, now)}` : '' },
    { count: total - sync.waiting - sync.attention, words: 'sent' },
  ];
  return html`<section class="stack" aria-labelledby="sending">
    <h2 id="sending">Records</h2>
    <ul class="status-figures">
      ${figures.map(
        ({ count, words, more }) => html`<li key=${words}>
          <span class="figure">${count}</span>
          <span>${words}</span>
          ${more && html`<span class="small soft">${more}</span>`}
        </li>`,
      )}
    </ul>
    <p>
      ${sync.lastHeard
        ? html`Last word from the clinic: <strong>${momentWords(sync.lastHeard)}</strong> (${agoWords(sync.lastHeard, now)}).`
        : 'The clinic has not been heard on this phone yet.'}
      ${sync.waiting > 0 && ' Without a network everything works on; it is sent by itself when the clinic can be reached.'}
    </p>
    ${login === 'expired' && html`<div class="buttons"><a class="button" href="#/sign-in">Sign in to send and fetch</a></div>`}
    ${sync.error?.code === 'client_too_old' && html`<${Notice} level="caution"><p>${sync.error.text}</p><//>`}
    ${sync.error && sync.error.code !== 'client_too_old' && html`<${Notice} level="note"><p>The last try: ${sync.error.text}</p><//>`}
    ${Math.abs(sync.clockOff_s ?? 0) > CLOCK_LIMIT_S &&
    html`<${Notice} level="caution">
      <p>This phone’s clock is ${Math.round(Math.abs(sync.clockOff_s) / 60)} minutes ${sync.clockOff_s > 0 ? 'ahead of' : 'behind'} the clinic’s. Times written here mislead; set the clock.</p>
    <//>`}
  </section>`;
}
