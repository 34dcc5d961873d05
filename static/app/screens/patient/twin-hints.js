/** A question, never an obstacle: this patient may have been entered twice. */
import { LIKENESS_WORDS } from '../../planning/twins.js';
import { useTwins } from '../../planning/use-twins.js';
import { heads } from '../../store/heads.js';
import { html } from '../../vendor/preact.js';

/** @param {{patient: string, records: readonly import('../../store/envelope.js').LedgerRecord[]}} props */
export function TwinHints({ patient, records }) {
  const twins = useTwins(records).get(patient) ?? [];
  return twins.map(({ other, likeness }) => {
    const [known] = heads(records, 'patient', other);
    if (!known) return null;
    return html`<section class="card twin-hint" key=${other} aria-label="Perhaps entered twice">
      <p>May be the same person as <strong>${known.body.full_name}</strong>, number ${known.body.hospital_number}. ${LIKENESS_WORDS[likeness]}</p>
      <a class="button" href=${`#/patients/${patient}/same/${other}`}>Compare the two</a>
    </section>`;
  });
}
