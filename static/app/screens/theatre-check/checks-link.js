/** The way from a case to the checks of its card, with how far they are. */
import { useObservable } from '../../observable.js';
import { nextPhase, phasesOf } from '../../planning/theatre-checks.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';

/** @param {{signature: import('../../store/envelope.js').LedgerRecord}} props */
export function ChecksLink({ signature }) {
  const next = nextPhase(phasesOf(useObservable(records), signature.id));
  const words = next ? `${next.phase} ${next.stops.length > 0 ? 'was stopped' : 'comes next'}` : 'all passed';
  return html`<a class="button" href=${`#/patients/${signature.patient}/checks/${signature.id}`}>Checks: ${words}</a>`;
}
