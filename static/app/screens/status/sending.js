/** The three figures and the last word from the clinic. */
import { useObservable } from '../../observable.js';
import { agoWords, momentWords } from '../../parts/calendar/ago.js';
import { useNow } from '../../parts/calendar/clock.js';
import { Notice } from '../../parts/notice/notice.js';
import { session } from '../../session/session.js';
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';

/** More than this between the clocks, and the times on records mislead their readers. */
const CLOCK_LIMIT_S = 120;

/** @param {{sync: any, total: number}} props */
export function Sending({ sync, total }) {
  const now = useNow();
  const { login } = useObservable(session);
  const figures = [
    { count: total, words: say('on this phone') },
    { count: sync.waiting, words: say('still to send'), more: sync.waiting > 0 && sync.oldestWaitingAt ? say('oldest {ago}', { ago: agoWords(sync.oldestWaitingAt, now) }) : '' },
    { count: total - sync.waiting - sync.attention, words: say('sent') },
  ];
  return html`<section class="stack" aria-labelledby="sending">
    <h2 id="sending">${say('Records')}</h2>
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
        ? say('Last word from the clinic: {moment} ({ago}).', { moment: momentWords(sync.lastHeard), ago: agoWords(sync.lastHeard, now) })
        : say('The clinic has not been heard on this phone yet.')}
      ${sync.waiting > 0 && ` ${say('Without a network everything works on; it is sent by itself when the clinic can be reached.')}`}
    </p>
    ${login === 'expired' && html`<div class="buttons"><a class="button" href="#/sign-in">${say('Sign in to send and fetch')}</a></div>`}
    ${sync.error?.code === 'client_too_old' && html`<${Notice} level="caution"><p>${sync.error.text}</p><//>`}
    ${sync.error && sync.error.code !== 'client_too_old' && html`<${Notice} level="note"><p>${say('The last try: {reason}', { reason: sync.error.text })}</p><//>`}
    ${Math.abs(sync.clockOff_s ?? 0) > CLOCK_LIMIT_S &&
    html`<${Notice} level="caution">
      <p>${clockWords(Math.round(Math.abs(sync.clockOff_s) / 60), sync.clockOff_s > 0)}</p>
    <//>`}
  </section>`;
}

/** @param {number} count minutes @param {boolean} isAhead */
function clockWords(count, isAhead) {
  return isAhead
    ? say('This phone’s clock is {count} minutes ahead of the clinic’s. Times written here mislead; set the clock.', { count })
    : say('This phone’s clock is {count} minutes behind the clinic’s. Times written here mislead; set the clock.', { count });
}
