/** The window of an adjustable suture: both times, and how long until the next of them. */
import { html } from '../../vendor/preact.js';
import { clockWords, leftWords, phaseOf, windowWords } from './window-words.js';
import { useNow } from './use-now.js';

const TITLES = { early: 'Wait before adjusting', now: 'The suture can be adjusted now', late: 'Past the usual time to adjust' };

/** @param {{window: import('./window-words.js').Window, children?: unknown}} props `children`: what can be done about it */
export function AdjustWindow({ window, children }) {
  const now_ms = useNow();
  const phase = phaseOf(window, now_ms);
  const until = phase === 'early' ? window.earliest_at : window.latest_at;
  return html`<section class=${`adjust-window adjust-${phase}`} aria-label="Adjustable suture">
    <h2 class="adjust-title">${TITLES[phase]}</h2>
    ${phase !== 'late' && html`<p class="adjust-left"><strong>${leftWords(until, now_ms)}</strong> ${phase === 'early' ? 'to wait' : 'left'}</p>`}
    <dl class="adjust-times">
      <div><dt>Not before</dt><dd>${clockWords(window.earliest_at, now_ms)}</dd></div>
      <div><dt>Usually until</dt><dd>${clockWords(window.latest_at, now_ms)}</dd></div>
    </dl>
    ${children}
  </section>`;
}

/** The same in one line, for a list. @param {{window: import('./window-words.js').Window}} props */
export function AdjustWord({ window }) {
  return html`<strong class="adjust-word">${windowWords(window, useNow())}</strong>`;
}
