/** What the team must know before it begins: what is newer than the signature in a frame of its own, then what is so, then what to ask. */
import { Mark } from '../../parts/mark/mark.js';
import { html } from '../../vendor/preact.js';

/** @typedef {{code: string, kind: 'alert' | 'ask' | 'tell', topic: string, text: string, newer: boolean}} Alert */

const SIGNS = /** @type {const} */ ({ alert: 'caution', tell: 'note' });
const WORDS = { alert: 'Alert', ask: 'Ask', tell: 'Say aloud' };

/** @param {{alerts: Alert[]}} props */
export function CardAlerts({ alerts }) {
  if (alerts.length === 0) return null;
  const newer = alerts.filter((alert) => alert.newer);
  const others = alerts.filter((alert) => !alert.newer && alert.kind !== 'ask');
  const asked = alerts.filter((alert) => !alert.newer && alert.kind === 'ask');
  return html`<section class="card-alerts" aria-label="Alerts">
    ${newer.length > 0 &&
    html`<div class="card-newer" role="alert">
      <p class="card-newer-words">Newer than the signature</p>
      <ul>${newer.map((alert) => html`<${One} key=${alert.code} alert=${alert} />`)}</ul>
    </div>`}
    <ul>${others.map((alert) => html`<${One} key=${alert.code} alert=${alert} />`)}</ul>
    ${asked.length > 0 &&
    html`<p class="card-asked"><span class="card-ask-sign" aria-hidden="true">?</span><span><strong>Not recorded, ask: </strong>${asked.map(({ topic }) => topic.toLowerCase()).join(', ')}</span></p>`}
  </section>`;
}

/** @param {{alert: Alert}} props */
function One({ alert }) {
  return html`<li class=${`card-alert card-alert-${alert.kind}`}>
    ${alert.kind === 'ask' ? html`<span class="card-ask-sign" aria-hidden="true">?</span>` : html`<${Mark} name=${SIGNS[alert.kind]} />`}
    <span><span class="unseen">${WORDS[alert.kind]}. </span><strong>${alert.topic}: </strong>${alert.text}</span>
  </li>`;
}
