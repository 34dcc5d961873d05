/** One step: whose it is, what is read aloud, what is then entered. */
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';
import { StepEntry } from './entries/entry.js';

/**
 * @param {object} props
 * @param {any} props.progress of the engine, with a step
 * @param {import('./round.js').Under} props.under
 * @param {string} props.patientName
 * @param {(held: Record<string, any>) => void} props.onHold
 */
export function Step({ progress: { step, provenance }, under, patientName, onHold }) {
  const holder = step.hand === 'second' ? under.second : under.first;
  return html`<div class="theatre check stack">
    <p class="check-hand">
      ${step.hand === 'second' ? html`Hand the device to <strong>${holder?.name}</strong>, ${holder?.role}.` : html`<strong>${holder?.name}</strong>, ${holder?.role}, holds the device.`}
    </p>
    <section class="check-aloud" aria-label="Read aloud">
      <p class="check-whose"><strong>${step.role}</strong>: read aloud</p>
      <p class="check-words">${step.aloud}</p>
    </section>
    ${step.do && html`<p class="check-do">${step.do}</p>`}
    <${StepEntry} step=${step} held=${under.held} onHold=${onHold} />
    <p class="small soft">Patient of this card: ${patientName}</p>
    <${Provenance} of=${provenance} />
  </div>`;
}
