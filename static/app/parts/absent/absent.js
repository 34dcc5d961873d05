/** The screen for a record that this phone does not hold: it says so and leads to a place that exists. */
import { html } from '../../vendor/preact.js';
import { Empty } from '../empty/empty.js';
import { Frame } from '../frame/frame.js';

/** @param {{what: string, step: {label: string, to: string}, patient?: any}} props `what` begins a sentence: "This plan" */
export function Absent({ what, step, patient }) {
  return html`<${Frame} title="Not on this phone" back=${step.to} patient=${patient}>
    <${Empty} title=${`${what} is not on this phone`} step=${step}>
      <p>It may not have arrived from the clinic yet.</p>
    <//>
  <//>`;
}
