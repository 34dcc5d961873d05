/**
 * What the team must know before it begins: what is newer than the signature, and what stands under another entry of this person, each
 * in a frame of its own; then what is so, then what to ask.
 */
import { Mark } from '../../parts/mark/mark.js';
import { html } from '../../vendor/preact.js';

/** @typedef {{code: string, kind: 'alert' | 'ask' | 'tell', topic: string, text: string, newer: boolean, entry?: string}} Alert */

const SIGNS = /** @type {const} */ ({ alert: 'caution', tell: 'note' });
const SAID = new Set(['allergies', 'anticoagulants']);
const SHORT = 60;
const WORDS = { alert: 'Alert', ask: 'Ask', tell: 'Say aloud' };

/**
 * Above the muscles: what is newer than the signature in full, and the rest by its name, so that the plan stays in sight.
 *
 * @param {{alerts: Alert[]}} props
 */
export function AlertStrip({ alerts }) {
  const newer = alerts.filter((alert) => alert.newer);
  const elsewhere = alerts.filter((alert) => alert.entry);
  const named = [...new Set(alerts.filter((alert) => isSigned(alert) && alert.kind === 'alert').map(inShort))];
  if (newer.length + elsewhere.length + named.length === 0) return null;
  return html`<section class="card-alerts" aria-label="Alerts in short">
    <${Framed} words="Newer than the signature" alerts=${newer} />
    <${Framed} words="From this person's other entry" alerts=${elsewhere} />
    ${named.length > 0 && html`<p class="card-alert card-named"><${Mark} name="caution" /><strong><span class="unseen">Alerts: </span>${named.join(' · ')}</strong></p>`}
  </section>`;
}

/** @param {{words: string, alerts: Alert[]}} props */
function Framed({ words, alerts }) {
  if (alerts.length === 0) return null;
  return html`<div class="card-newer" role="alert">
    <p class="card-newer-words">${words}</p>
    <ul>${alerts.map((alert) => html`<${One} key=${alert.code} alert=${alert} />`)}</ul>
  </div>`;
}

/** @param {Alert} alert  whether the signed record of this entry says it, or the plan */
const isSigned = ({ newer, entry }) => !newer && !entry;

/** @param {Alert} alert  what was entered is short enough to be read at once; a sentence stands below */
function inShort({ code, topic, text }) {
  return SAID.has(code) && text.length <= SHORT ? `${topic}: ${text}` : topic;
}

/** @param {{alerts: Alert[]}} props */
export function CardAlerts({ alerts }) {
  const known = alerts.filter(isSigned);
  if (known.length === 0) return null;
  const others = known.filter(({ kind }) => kind !== 'ask');
  const asked = known.filter(({ kind }) => kind === 'ask');
  return html`<section class="card-alerts" aria-label="Alerts">
    <ul>${others.map((alert) => html`<${One} key=${alert.code} alert=${alert} />`)}</ul>
    ${asked.length > 0 &&
    html`<p class="card-asked"><span class="card-ask-sign" aria-hidden="true">?</span><span><strong>Not recorded, ask: </strong>${asked.map(({ topic }) => topic.toLowerCase()).join(', ')}</span></p>`}
  </section>`;
}

/** @param {{alert: Alert}} props */
function One({ alert }) {
  return html`<li class=${`card-alert card-alert-${alert.kind}`}>
    ${alert.kind === 'ask' ? html`<span class="card-ask-sign" aria-hidden="true">?</span>` : html`<${Mark} name=${SIGNS[alert.kind]} />`}
    <span><span class="unseen">${WORDS[alert.kind]}. </span><strong>${alert.topic}: </strong>${alert.text}${alert.entry && html` <span class="soft">Entered as ${alert.entry}.</span>`}</span>
  </li>`;
}
