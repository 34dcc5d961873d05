/** Who this is about, by two identifiers and the age; it stays in sight on every screen of a patient. */
import { html } from '../../vendor/preact.js';
import { ageWords } from '../calendar/age.js';
import { shortDateWords, today } from '../calendar/date.js';

/** @param {{patient: {full_name: string, born_on: string, hospital_number: string}}} props the body of the patient's record */
export function PatientBanner({ patient }) {
  return html`<section class="banner" aria-label="Patient">
    <p class="banner-name">${patient.full_name}</p>
    <p class="banner-facts">
      <span><span class="banner-word">born </span>${shortDateWords(patient.born_on)} <strong>(${ageWords(patient.born_on, today())})</strong></span>
      <span><span class="banner-word">number </span><strong>${patient.hospital_number}</strong></span>
    </p>
  </section>`;
}
