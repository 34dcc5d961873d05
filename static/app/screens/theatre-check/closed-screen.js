/** A check that was just kept: passed, or stopped and why. */
import { Frame } from '../../parts/frame/frame.js';
import { Mark } from '../../parts/mark/mark.js';
import { html } from '../../vendor/preact.js';
import { StopShown } from './stop-shown.js';

/**
 * @param {object} props
 * @param {import('../../store/envelope.js').LedgerRecord} props.patient
 * @param {import('../../store/envelope.js').LedgerRecord} props.check
 * @param {string} props.words the phase's
 * @param {() => void} props.onLeave
 */
export function ClosedScreen({ patient, check: { body }, words, onLeave }) {
  const hasPassed = body.outcome === 'passed';
  return html`<${Frame} title=${hasPassed ? `${words} passed` : `${words} stopped`} patient=${patient.body} back=${onLeave} next=${{ label: 'To the checks', act: onLeave }}>
    <div class="theatre check stack">
      ${hasPassed
        ? html`<p class="check-passed"><${Mark} name="done" /><strong>Passed</strong></p>`
        : html`<${StopShown} text=${body.stop.text} />
            <p class="check-do">This stop is kept. Find out which one is wrong, then begin a new check.</p>`}
    </div>
  <//>`;
}
