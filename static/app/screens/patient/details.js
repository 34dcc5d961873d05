/** What is known of the patient beyond the banner, and the way to correct it. */
import { useRights } from '../../planning/use-rights.js';
import { html } from '../../vendor/preact.js';

/** @param {{patient: import('../../store/envelope.js').LedgerRecord}} props */
export function Details({ patient: { body, patient: id } }) {
  const rights = useRights();
  return html`<section class="card stack" aria-labelledby="details">
    <h2 id="details">Details</h2>
    <dl class="facts">
      <div class="fact"><dt>Sex</dt><dd>${body.sex ?? 'unknown'}</dd></div>
      <div class="fact"><dt>Allergies</dt><dd>${body.allergies ? html`<strong>${body.allergies}</strong>` : 'none entered'}</dd></div>
      ${isTold(body.latex) && html`<div class="fact"><dt>Latex not borne</dt><dd><strong>${body.latex}</strong></dd></div>`}
      ${body.anticoagulants && html`<div class="fact"><dt>Anticoagulants</dt><dd><strong>${body.anticoagulants}</strong></dd></div>`}
      ${isTold(body.malignant_hyperthermia_family) &&
      html`<div class="fact"><dt>Malignant hyperthermia in the family</dt><dd><strong>${body.malignant_hyperthermia_family}</strong></dd></div>`}
      ${body.note && html`<div class="fact"><dt>Note</dt><dd class="as-typed">${body.note}</dd></div>`}
    </dl>
    <div class="buttons">
      ${rights.write('patient') && html`<a class="button" href=${`#/patients/${id}/edit`}>Correct details</a>`}
      ${rights.write('examination') && html`<a class="button" href=${`#/patients/${id}/export`}>Export as FHIR</a>`}
    </div>
  </section>`;
}

/** @param {string | undefined} answer */
const isTold = (answer) => answer === 'yes' || answer === 'no';
