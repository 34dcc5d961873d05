/** The step at the foot of a screen: a link, an act, or the submission of a form. */
import { html, useState } from '../../vendor/preact.js';

/**
 * @typedef {object} Step
 * @property {string} label
 * @property {string} [to] a route, for example `/patients`
 * @property {() => void} [act]
 * @property {string} [form] id of the form that the step submits
 * @property {string} [blocked] why it cannot be taken yet; shown above the step, and the step says it again when touched
 */

/** @param {{step: Step, rank: 'main' | 'also'}} props */
export function NextStep({ step, rank }) {
  const [asked, setAsked] = useState(false);
  const look = `button ${rank}`;

  if (step.blocked) {
    return html`<div class="frame-step">
      <p class="frame-blocked" role=${asked ? 'alert' : undefined}>${step.blocked}</p>
      <button type="button" class=${look} aria-disabled="true" onClick=${() => setAsked(true)}>${step.label}</button>
    </div>`;
  }
  if (step.to) return html`<div class="frame-step"><a class=${look} href=${`#${step.to}`}>${step.label}</a></div>`;
  return html`<div class="frame-step">
    <button type=${step.form ? 'submit' : 'button'} form=${step.form} class=${look} onClick=${step.act}>${step.label}</button>
  </div>`;
}
